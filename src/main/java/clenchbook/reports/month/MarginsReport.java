package clenchbook.reports.month;

import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.costing.JobCost;
import clenchbook.costing.Overheads;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.PageBreak;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
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

  private static final int FEWEST_OWNERS = 10;

  private final Margins margins;
  private final String period;
  private final MarginTables tables;
  private final MarginPictures pictures;
  private final FigureText text;

  private MarginsReport(Margins margins, String period) {
    this.margins = margins;
    this.period = period;
    this.tables = new MarginTables(margins);
    this.pictures = new MarginPictures(margins);
    this.text = FigureText.of(margins.settings());
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
    boolean work = margins.whole().isPresent();
    return new Report(
        "margins",
        "What the work left",
        "What the work cost and what it left",
        report.subtitle(),
        CAUTION,
        Optional.of(new MarginsAnswer(margins).page()),
        work ? report.evidence() : List.of(),
        work ? report.annex() : List.of());
  }

  private String subtitle() {
    Settings settings = margins.settings();
    String business = settings.text(Setting.BUSINESS_NAME);
    return Stream.of(business, period, "amounts in %s without tax".formatted(text.currencySign()))
        .filter(text -> !text.isEmpty())
        .reduce((one, other) -> one + " · " + other)
        .orElse("");
  }

  private List<Block> evidence() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "By Work"));
    blocks.add(tables.priced("Work", margins.byWork()));
    blocks.add(pictures.perHour());
    blocks.add(new Heading(1, "By kind of shoe"));
    blocks.add(tables.leftWithWhole("Shoe", margins.byShoe()));
    blocks.add(new PageBreak());
    blocks.add(new Heading(1, "By place"));
    blocks.add(tables.leftWithWhole("Place", margins.byPlace()));
    blocks.add(new PageBreak());
    blocks.add(new Heading(1, "Owners whose work left least"));
    blocks.add(tables.leftOf("Owner", leastLeft(), ""));
    blocks.addAll(belowWage());
    return blocks;
  }

  private List<MarginGroup> leastLeft() {
    return margins.byOwner().stream()
        .sorted(
            Comparator.comparing(MarginGroup::marginAfter)
                .thenComparing(MarginGroup::name, Names.ORDER))
        .limit(FEWEST_OWNERS)
        .toList();
  }

  private List<Block> annex() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "How it was made"));
    blocks.add(new Paragraph(overheadsInWords()));
    margins
        .whole()
        .flatMap(this::roundingInWords)
        .ifPresent(words -> blocks.add(new Paragraph(words)));
    blocks.add(new Heading(1, "Where the costs lie"));
    blocks.add(tables.costs("Work", margins.byWork()));
    blocks.add(tables.costs("Shoe", margins.byShoe()));
    blocks.add(tables.costs("Place", margins.byPlace()));
    blocks.add(new Heading(1, "By owner"));
    blocks.add(tables.leftWithWhole("Owner", margins.byOwner()));
    blocks.add(tables.costs("Owner", margins.byOwner()));
    return blocks;
  }

  private String overheadsInWords() {
    Overheads overheads = margins.overheads();
    String yearly = text.about(overheads.yearly());
    String hours = text.plain(margins.settings().number(Setting.HOURS_PER_YEAR));
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
            ? "of " + text.month(overheads.months().get(0))
            : "from "
                + text.month(overheads.months().get(0))
                + " to "
                + text.month(overheads.months().get(months - 1)))
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
            + text.money(margins.billedNet())
            + " without tax. The difference of "
            + text.money(difference)
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
    blocks.add(tables.belowWage(jobs.subList(0, shown)));
    return blocks;
  }
}
