package clenchbook.month;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.costing.JobCost;
import clenchbook.costing.Overheads;
import clenchbook.measure.Basis;
import clenchbook.report.Block;
import clenchbook.report.Block.Cell;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.Heading;
import clenchbook.report.Block.KeyFigure;
import clenchbook.report.Block.KeyFigures;
import clenchbook.report.Block.Paragraph;
import clenchbook.report.Block.Picture;
import clenchbook.report.Block.Row;
import clenchbook.report.Block.Table;
import clenchbook.report.Chart;
import clenchbook.report.Report;
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

  private final Margins margins;
  private final String period;

  private MarginsReport(Margins margins, String period) {
    this.margins = margins;
    this.period = period;
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
    blocks.add(report.perHourPicture());
    blocks.add(report.left("By Work", "Work", margins.byWork()));
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
    blocks.add(wherePicture(whole));
    blocks.add(new Heading(1, "By Work"));
    blocks.add(perHourPicture());
    blocks.add(costs("Work", margins.byWork()));
    blocks.add(left("What each Work left, and the price it would need", "Work", margins.byWork()));
    blocks.add(new Heading(1, "By kind of shoe"));
    blocks.add(costs("Shoe", margins.byShoe()));
    blocks.add(leftPlain("Shoe", margins.byShoe()));
    blocks.add(new Heading(1, "By place"));
    blocks.add(costs("Place", margins.byPlace()));
    blocks.add(leftPlain("Place", margins.byPlace()));
    blocks.add(new Heading(1, "By owner"));
    blocks.add(costs("Owner", margins.byOwner()));
    blocks.add(leftPlain("Owner", margins.byOwner()));
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
    return "Overheads of "
        + yearly
        + ": the book's expenses from "
        + overheads.months().get(0)
        + " to "
        + overheads.months().get(overheads.months().size() - 1)
        + " ("
        + overheads.months().size()
        + " of 12 months hold any) that no job bears already."
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

  private Picture wherePicture(MarginGroup whole) {
    List<String> names =
        List.of(
            "materials", "gas", "sundries", "travel", "overhead", "labour", "left after labour");
    List<BigDecimal> amounts =
        List.of(
            whole.sum(JobCost::materials),
            whole.sum(JobCost::gas),
            whole.sum(JobCost::sundries),
            whole.sum(JobCost::travel),
            whole.sum(JobCost::overhead),
            whole.sum(JobCost::labour),
            whole.marginAfter());
    return new Picture(
        "Where the income went",
        "Of "
            + Figures.money(whole.income())
            + " income, "
            + Figures.money(whole.marginAfter())
            + " was left after all costs and own labour.",
        new Chart.Columns(
            "",
            margins.settings().currency(),
            names,
            List.of(
                new Chart.Series("amount", amounts.stream().map(BigDecimal::doubleValue).toList())),
            false,
            true,
            List.of()));
  }

  private Picture perHourPicture() {
    List<MarginGroup> groups =
        margins.byWork().stream()
            .filter(group -> group.earnedPerHour().isPresent())
            .sorted(
                Comparator.comparing((MarginGroup group) -> group.earnedPerHour().orElseThrow())
                    .reversed())
            .toList();
    BigDecimal wage = margins.settings().number(Setting.HOURLY_WAGE);
    long below =
        groups.stream()
            .filter(group -> group.earnedPerHour().orElseThrow().compareTo(wage) < 0)
            .count();
    List<Chart.Limit> limits =
        wage.signum() > 0 ? List.of(new Chart.Limit("the wage", wage.doubleValue())) : List.of();
    return new Picture(
        "Earned per hour, before own labour",
        below + " of " + groups.size() + " kinds of work earned less an hour than the wage.",
        new Chart.Columns(
            "",
            margins.settings().currency() + " an hour",
            groups.stream().map(MarginGroup::name).toList(),
            List.of(
                new Chart.Series(
                    "earned per hour",
                    groups.stream()
                        .map(group -> group.earnedPerHour().orElseThrow().doubleValue())
                        .toList())),
            false,
            true,
            limits));
  }

  private Table costs(String by, List<MarginGroup> groups) {
    List<Column> columns =
        List.of(
            Column.words(by, 6),
            Column.number("Jobs", 2),
            Column.number("Income", 4),
            Column.number("Materials", 4),
            Column.number("Gas", 3),
            Column.number("Sundries", 3),
            Column.number("Travel", 4),
            Column.number("Overhead", 4));
    List<Row> rows = new ArrayList<>();
    groups.forEach(group -> rows.add(costRow(group, group.name(), false)));
    margins.whole().ifPresent(whole -> rows.add(costRow(whole, "All", true)));
    return new Table("Income and costs", columns, rows);
  }

  private Row costRow(MarginGroup group, String name, boolean total) {
    Basis materials = group.basis(JobCost::materialsBasis);
    Basis time = group.basis(JobCost::timeBasis);
    Settings settings = margins.settings();
    Basis gas = settings.gasCostGiven() ? time : Basis.DEFAULT;
    return new Row(
        List.of(
            Cell.of(name),
            Cell.of(Figures.count(group.jobs().size())),
            Cell.of(Figures.money(group.income()), Basis.MEASURED),
            Cell.of(Figures.money(group.sum(JobCost::materials)), materials),
            Cell.of(Figures.money(group.sum(JobCost::gas)), gas),
            Cell.of(
                Figures.money(group.sum(JobCost::sundries)),
                settings.isGiven(Setting.SUNDRIES) ? Basis.STANDARD : Basis.DEFAULT),
            Cell.of(
                Figures.money(group.sum(JobCost::travel)),
                settings.isGiven(Setting.VEHICLE_COST)
                    ? group.basis(JobCost::travelBasis)
                    : Basis.DEFAULT),
            Cell.of(
                Figures.money(group.sum(JobCost::overhead)),
                time.weaker(margins.overheads().basis()))),
        total);
  }

  private Table left(String caption, String by, List<MarginGroup> groups) {
    List<Column> columns = new ArrayList<>(leftColumns(by));
    columns.add(Column.number("Average net", 4));
    columns.add(Column.number("Price to reach the wage", 5));
    List<Row> rows = new ArrayList<>();
    for (MarginGroup group : groups) {
      List<Cell> cells = new ArrayList<>(leftCells(group, group.name()));
      cells.add(Cell.of(Figures.money(group.averageNet()), Basis.MEASURED));
      cells.add(
          Cell.of(
              Figures.money(Optional.ofNullable(margins.neededPrice().get(group.name()))),
              basisAfter(group)));
      rows.add(new Row(cells, false));
    }
    return new Table(caption, columns, rows);
  }

  private Table leftPlain(String by, List<MarginGroup> groups) {
    List<Row> rows = new ArrayList<>();
    groups.forEach(group -> rows.add(new Row(leftCells(group, group.name()), false)));
    margins.whole().ifPresent(whole -> rows.add(new Row(leftCells(whole, "All"), true)));
    return new Table("What was left", leftColumns(by), rows);
  }

  private static List<Column> leftColumns(String by) {
    return List.of(
        Column.words(by, 6),
        Column.number("Before labour", 4),
        Column.number("Labour", 4),
        Column.number("After labour", 4),
        Column.number("Hours", 3),
        Column.number("Per hour", 4));
  }

  private List<Cell> leftCells(MarginGroup group, String name) {
    Basis before =
        group
            .basis(JobCost::materialsBasis)
            .weaker(group.timeBasis())
            .weaker(margins.overheads().basis());
    return List.of(
        Cell.of(name),
        Cell.of(Figures.money(group.marginBefore()), before),
        Cell.of(Figures.money(group.sum(JobCost::labour)), basisAfter(group)),
        Cell.of(Figures.money(group.marginAfter()), before.weaker(basisAfter(group))),
        Cell.of(Margins.hours(group), group.timeBasis()),
        Cell.of(group.earnedPerHour().map(Figures::money).orElse(""), before));
  }

  private Basis basisAfter(MarginGroup group) {
    return margins.settings().isGiven(Setting.HOURLY_WAGE) ? group.timeBasis() : Basis.DEFAULT;
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
    List<Row> rows =
        jobs.subList(0, shown).stream()
            .map(
                cost ->
                    Row.of(
                        cost.job().date().toString(),
                        cost.job().horse().name(),
                        cost.job().workName(),
                        Figures.money(cost.chargeNet()),
                        Figures.money(cost.marginAfterLabour()),
                        cost.earnedPerHour().map(Figures::money).orElse("")))
            .toList();
    blocks.add(
        new Table(
            "",
            List.of(
                Column.words("Date", 3),
                Column.words("Horse", 5),
                Column.words("Work", 6),
                Column.number("Charge", 3),
                Column.number("After labour", 3),
                Column.number("Per hour", 3)),
            rows));
    return blocks;
  }
}
