package clenchbook.reports.month;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.costing.JobCost;
import clenchbook.costing.Overheads;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.reports.blocks.Block.KeyFigures;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.Report;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the margins say, for print and for the month's page. */
public final class MarginsReport {
  private static final int MOST_BELOW_WAGE = 25;
  private static final String CAUTION =
      "Costs rest on this book and its settings; where a figure is marked as standard or default,"
          + " it is only as good as that. Not tax advice: local rules and a licensed adviser"
          + " decide.";

  private final Margins margins;
  private final String period;
  private final MarginTables tables;
  private final MarginPictures pictures;

  private MarginsReport(Margins margins, String period) {
    this.margins = margins;
    this.period = period;
    this.tables = new MarginTables(margins);
    this.pictures = new MarginPictures(margins);
  }

  /**
   * The report.
   *
   * @param margins the margins
   * @param period the period in words
   * @return the report, named {@code margins}
   */
  public static Report of(Margins margins, String period) {
    MarginsReport report = new MarginsReport(margins, period);
    return new Report(
        "margins",
        "What the work cost and what it left",
        report.subtitle(),
        CAUTION,
        report.blocks());
  }

  /**
   * The part of the month's page.
   *
   * @param margins the margins
   * @return key figures, one picture and the table by Work
   */
  public static List<Block> page(Margins margins) {
    MarginsReport report = new MarginsReport(margins, "");
    List<Block> blocks = new ArrayList<>();
    if (margins.whole().isEmpty()) {
      return List.of(new Paragraph("No work in this month."));
    }
    blocks.add(report.keyFigures(margins.whole().get()));
    blocks.addAll(report.notGiven());
    blocks.add(report.pictures.perHour());
    blocks.add(report.tables.left("By Work", "Work", margins.byWork()));
    return blocks;
  }

  private String subtitle() {
    Settings settings = margins.settings();
    String business = settings.text(Setting.BUSINESS_NAME);
    return Stream.of(business, period, "amounts in " + settings.currency() + " without tax")
        .filter(text -> !text.isEmpty())
        .reduce((one, other) -> one + " · " + other)
        .orElse("");
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (margins.whole().isEmpty()) {
      blocks.add(new Paragraph("No work in this period."));
      return blocks;
    }
    MarginGroup whole = margins.whole().get();
    blocks.add(keyFigures(whole));
    blocks.addAll(notGiven());
    blocks.add(new Paragraph(overheadsInWords()));
    roundingInWords(whole).ifPresent(text -> blocks.add(new Paragraph(text)));
    blocks.add(pictures.whereItWent(whole));
    blocks.add(new Heading(1, "By Work"));
    blocks.add(pictures.perHour());
    blocks.add(tables.costs("Work", margins.byWork()));
    blocks.add(
        tables.left("What each Work left, and the price it would need", "Work", margins.byWork()));
    blocks.add(new Heading(1, "By kind of shoe"));
    blocks.add(tables.costs("Shoe", margins.byShoe()));
    blocks.add(tables.leftPlain("Shoe", margins.byShoe()));
    blocks.add(new Heading(1, "By place"));
    blocks.add(tables.costs("Place", margins.byPlace()));
    blocks.add(tables.leftPlain("Place", margins.byPlace()));
    blocks.add(new Heading(1, "By owner"));
    blocks.add(tables.costs("Owner", margins.byOwner()));
    blocks.add(tables.leftPlain("Owner", margins.byOwner()));
    blocks.addAll(belowWage());
    return blocks;
  }

  private KeyFigures keyFigures(MarginGroup whole) {
    Basis costs =
        whole
            .basis(JobCost::materialsBasis)
            .weaker(whole.basis(JobCost::travelBasis))
            .weaker(margins.overheads().basis());
    Basis time = whole.timeBasis();
    Basis wage = margins.settings().isGiven(Setting.HOURLY_WAGE) ? Basis.MEASURED : Basis.DEFAULT;
    return new KeyFigures(
        List.of(
            new KeyFigure(
                "Income without tax", Figures.money(whole.income()), Optional.of(Basis.MEASURED)),
            new KeyFigure(
                "Left before own labour", Figures.money(whole.marginBefore()), Optional.of(costs)),
            new KeyFigure(
                "Left after own labour",
                Figures.money(whole.marginAfter()),
                Optional.of(costs.weaker(time).weaker(wage))),
            new KeyFigure(
                "Earned per hour",
                whole.earnedPerHour().map(Figures::money).orElse("no time given"),
                Optional.of(costs.weaker(time)))));
  }

  private List<Block> notGiven() {
    Settings settings = margins.settings();
    List<String> missing = new ArrayList<>();
    Stream.of(Setting.HOURLY_WAGE, Setting.VEHICLE_COST, Setting.SUNDRIES)
        .filter(setting -> !settings.isGiven(setting))
        .map(Setting::title)
        .forEach(missing::add);
    if (!settings.gasCostGiven()) {
      missing.add("Gas cost");
    }
    return missing.isEmpty()
        ? List.of()
        : List.of(
            new Paragraph(
                "Not given in Settings, and so reckoned at nothing: "
                    + String.join(", ", missing)
                    + "."));
  }

  private String overheadsInWords() {
    Overheads overheads = margins.overheads();
    String yearly = Figures.plain(overheads.yearly());
    String hours = Figures.plain(margins.settings().number(Setting.HOURS_PER_YEAR));
    String spread =
        " They are spread over "
            + hours
            + " hours a year"
            + (margins.settings().isGiven(Setting.HOURS_PER_YEAR) ? "." : " (the default).");
    if (overheads.basis() == Basis.STANDARD) {
      return "Overheads of " + yearly + " a year, as Settings gives them." + spread;
    }
    if (overheads.months().isEmpty()) {
      return "Overheads of "
          + yearly
          + " a year: the book holds no expenses to take them from."
          + spread;
    }
    int months = overheads.months().size();
    return "Overheads of "
        + yearly
        + ": the book's expenses "
        + (months == 1
            ? "of " + overheads.months().get(0)
            : "from " + overheads.months().get(0) + " to " + overheads.months().get(months - 1))
        + " ("
        + months
        + " of 12 months "
        + (months == 1 ? "holds" : "hold")
        + " any) that no job bears already."
        + spread;
  }

  /** Jobs and documents are rounded each for itself; empty where they agree. */
  private Optional<String> roundingInWords(MarginGroup whole) {
    BigDecimal difference = margins.rounding();
    if (difference.signum() == 0) {
      return Optional.empty();
    }
    BigDecimal most = difference.ulp().multiply(BigDecimal.valueOf(whole.jobs().size()));
    String why =
        difference.abs().compareTo(most) <= 0
            ? " is rounding: shares, and prices that include tax, are rounded on the documents."
            : " is more than rounding: documents may hold corrections and visits of other months,"
                + " and lack visits not billed yet.";
    return Optional.of(
        "The documents of this time come to "
            + Figures.money(margins.billedNet())
            + " without tax. The difference of "
            + Figures.money(difference)
            + why);
  }

  private List<Block> belowWage() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Jobs that earned less than the wage"));
    List<JobCost> jobs = margins.belowWage();
    if (jobs.isEmpty()) {
      blocks.add(new Paragraph("None."));
      return blocks;
    }
    int shown = Math.min(MOST_BELOW_WAGE, jobs.size());
    blocks.add(
        new Paragraph(
            shown < jobs.size()
                ? jobs.size()
                    + " jobs; the "
                    + shown
                    + " lowest are shown, the rest stand in"
                    + " figures/jobs.csv."
                : jobs.size() + " jobs."));
    blocks.add(MarginTables.belowWage(jobs.subList(0, shown)));
    return blocks;
  }
}
