package clenchbook.yearend;

import clenchbook.book.Setting;
import clenchbook.rates.MissingRate;
import clenchbook.rates.Rate;
import clenchbook.rates.RateUnit;
import clenchbook.report.Block;
import clenchbook.report.FigureTable;
import clenchbook.report.Report;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The tax summary as pages: the lines first, then what stands beside them, the ties, and the
 * sources.
 */
final class YearEndReport {
  private static final String CAUTION =
      "A summary for whoever prepares the return: not a return, and not advice. Each rate's year"
          + " and source stand in the last table. Local rules and a licensed adviser decide.";

  private static final int MOST_LEFT = 40;

  private final YearFigures figures;
  private final List<SummaryLine> summary;
  private final List<JournalEntry> journal;
  private final Reconciliation ties;
  private final YearTables tables;
  private final RateLookup rates;
  private final List<Block> blocks = new ArrayList<>();

  YearEndReport(
      YearFigures figures,
      SummaryBuilder lines,
      List<JournalEntry> journal,
      Reconciliation ties,
      YearTables tables,
      RateLookup rates) {
    this.figures = figures;
    this.summary = lines.lines();
    this.journal = journal;
    this.ties = ties;
    this.tables = tables;
    this.rates = rates;
  }

  YearEndFindings findings() {
    List<FigureTable> tax = new TaxTables(figures, rates).all(summary);
    List<String> notes = YearNotes.of(figures, ties, rates);
    List<String> errors = MissingRate.sentences(rates.missing());
    FigureTable lines = tables.summary(summary, errors);
    List<FigureTable> figureTables =
        new ArrayList<>(List.of(lines, tables.mileage(), tables.flags()));
    figureTables.addAll(
        List.of(
            tables.reconstructed(),
            tables.categories(),
            tables.reconciliation(ties),
            tables.rates()));
    figureTables.addAll(tax);
    Report report = report(errors, notes, tax);
    List<FigureTable> accountant =
        List.of(tables.lines(summary), tables.journal(journal), tables.assets());
    return new YearEndFindings(
        figures.period(),
        report,
        tables.mileageLog(),
        figureTables,
        accountant,
        errors,
        figures.billedForVisits(),
        notes);
  }

  private Report report(List<String> errors, List<String> notes, List<FigureTable> tax) {
    blocks.add(new Block.Caution(CAUTION));
    errors.forEach(error -> blocks.add(new Block.Caution("No figure: " + error + ".")));
    keyFigures();
    lines();
    list("What to look at", notes);
    beside();
    tax.forEach(table -> table(title(table.name()), table));
    vehicle();
    assets();
    reconciliation();
    categories();
    sources();
    String business = figures.input().book().settings().text(Setting.BUSINESS_NAME);
    String subtitle = (business.isEmpty() ? "" : business + ", ") + figures.period().text();
    String title =
        "Tax summary "
            + figures.input().taxYear().label()
            + figures.input().quarter().map(number -> ", quarter " + number).orElse("");
    return new Report("tax-summary", title, subtitle, CAUTION, blocks);
  }

  private void keyFigures() {
    List<Block.KeyFigure> figuresSet = new ArrayList<>();
    for (String code : keyCodes()) {
      line(code)
          .ifPresent(
              line ->
                  figuresSet.add(
                      new Block.KeyFigure(label(line), money(line.amount()), Optional.empty())));
    }
    blocks.add(new Block.KeyFigures(figuresSet));
    blocks.add(
        new Block.Paragraph(
            "Regime "
                + figures.regime().word()
                + ". Income: "
                + figures.basis().word()
                + ". Costs: "
                + figures.basis().costWord()
                + ". Amounts in "
                + figures.input().book().settings().currency()
                + "."));
  }

  private static String label(SummaryLine line) {
    return line.head().name().split(" \\(", 2)[0];
  }

  private List<String> keyCodes() {
    return switch (figures.regime()) {
      case US -> List.of("gross income", "total expenses", "net profit");
      case UK -> List.of("turnover", "total expenses", "net profit");
      case PLAIN -> List.of("total income", "total expenses", "profit");
    };
  }

  private Optional<SummaryLine> line(String code) {
    String number = tables.headOf(code).line();
    return summary.stream().filter(row -> row.head().line().equals(number)).findFirst();
  }

  private String money(BigDecimal amount) {
    return amount.toPlainString();
  }

  private void lines() {
    blocks.add(new Block.Heading(1, "Line by line"));
    List<Block.Row> rows = new ArrayList<>();
    for (SummaryLine line : summary) {
      if (isOfForm(line)) {
        rows.add(row(line));
      }
    }
    blocks.add(new Block.Table("", columns(), rows));
  }

  private static boolean isOfForm(SummaryLine line) {
    return line.kind() != SummaryLine.Kind.BESIDE || line.head().line().startsWith("SE ");
  }

  private static List<Block.Column> columns() {
    return List.of(
        Block.Column.words("Line", 3),
        Block.Column.words("Name", 9),
        Block.Column.number("Amount", 3),
        Block.Column.number("Rows", 2),
        Block.Column.words("Basis", 5));
  }

  private Block.Row row(SummaryLine line) {
    long rows = line.items().stream().filter(item -> item.row() > 0).count();
    List<Block.Cell> cells =
        List.of(
            Block.Cell.of(line.head().line()),
            Block.Cell.of(line.head().name()),
            Block.Cell.of(money(line.amount())),
            Block.Cell.of(rows == 0 ? "" : String.valueOf(rows)),
            Block.Cell.of(line.basis()));
    return new Block.Row(cells, line.kind() == SummaryLine.Kind.TOTAL);
  }

  private void list(String heading, List<String> sentences) {
    blocks.add(new Block.Heading(1, heading));
    sentences.forEach(sentence -> blocks.add(new Block.Paragraph(sentence)));
  }

  private void beside() {
    blocks.add(new Block.Heading(1, "Beside the lines"));
    blocks.add(
        new Block.Paragraph(
            "Parts of the lines above, the vehicle the other way, and what counts on no line. None"
                + " of it is in a total."));
    List<Block.Row> rows =
        summary.stream()
            .filter(line -> !isOfForm(line) && !line.head().line().startsWith("VAT "))
            .map(this::row)
            .toList();
    blocks.add(new Block.Table("", columns(), rows));
  }

  private String title(String table) {
    return switch (table) {
      case "sales-tax" -> "Sales by tax rate and quarter";
      case "quarters" -> "By quarter";
      case "quarterly-updates" -> "Quarterly updates, each from the year's first day";
      case "instalments" -> "Instalments of estimated tax: due days";
      case "vat" -> "VAT by period";
      case "turnover" -> "Twelve months' turnover and the registration threshold";
      case "short-form" -> "The same in the boxes of the short form";
      case "allowances" -> "Named, not computed";
      case "input-tax" -> "Tax on purchases that comes back";
      default -> table;
    };
  }

  private void table(String heading, FigureTable table) {
    blocks.add(new Block.Heading(2, heading));
    blocks.add(PrintedTables.of(table));
  }

  private void vehicle() {
    blocks.add(new Block.Heading(1, "Mileage"));
    blocks.add(PrintedTables.of(tables.mileage()));
    if (!tables.flags().rows().isEmpty()) {
      table("What is odd in the log", tables.flags());
    }
    if (!figures.reconstructed().isEmpty()) {
      table(
          "Driven without a trip in the log, as reconstructed from Places", tables.reconstructed());
    }
  }

  private void assets() {
    if (!figures.assets().isEmpty()) {
      blocks.add(new Block.Heading(1, "Assets"));
      List<Block.Row> rows = figures.assets().stream().map(this::asset).toList();
      blocks.add(
          new Block.Table(
              "",
              List.of(
                  Block.Column.words("Asset", 8),
                  Block.Column.words("Bought", 4),
                  Block.Column.number("Basis", 4),
                  Block.Column.words("Class", 6),
                  Block.Column.number("Before", 4),
                  Block.Column.number("This year", 4),
                  Block.Column.number("Left", 4)),
              rows));
    }
  }

  private Block.Row asset(DepreciatedAsset asset) {
    return Block.Row.of(
        asset.asset().name(),
        asset.asset().bought().toString(),
        money(asset.basis()),
        classOf(asset),
        money(asset.before()),
        money(asset.thisYear()),
        money(asset.remaining()));
  }

  private String classOf(DepreciatedAsset asset) {
    List<String> words = new ArrayList<>(List.of(asset.kind(), asset.convention()));
    if (asset.vehicle() && figures.regime() == Regime.US && figures.vehicle().byMileage()) {
      words.add("not counted beside mileage");
    }
    asset.asset().sold().ifPresent(day -> words.add("sold " + day));
    asset.gain(figures.period()).ifPresent(gain -> words.add("gain " + money(gain)));
    return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
  }

  private void reconciliation() {
    blocks.add(new Block.Heading(1, "Tied to register and book"));
    String part = "";
    List<Block.Row> rows = new ArrayList<>();
    for (Reconciliation.Step step : ties.steps()) {
      if (!step.part().equals(part)) {
        part = step.part();
        rows.add(Block.Row.of(part, ""));
      }
      List<Block.Cell> cells =
          List.of(Block.Cell.of(step.label()), Block.Cell.of(money(step.amount())));
      rows.add(new Block.Row(cells, step.result()));
    }
    blocks.add(
        new Block.Table(
            "", List.of(Block.Column.words("Step", 12), Block.Column.number("Amount", 3)), rows));
    left();
  }

  private void left() {
    if (ties.left().isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is left over."));
      return;
    }
    List<Block.Row> rows =
        ties.left().stream()
            .limit(MOST_LEFT)
            .map(
                left ->
                    Block.Row.of(
                        left.sheet() + " " + YearTables.row(left.row()),
                        left.date().toString(),
                        left.who(),
                        left.why(),
                        money(left.amount())))
            .toList();
    blocks.add(
        new Block.Table(
            "Left over, by row",
            List.of(
                Block.Column.words("Row", 3),
                Block.Column.words("Date", 3),
                Block.Column.words("Who", 5),
                Block.Column.words("Why", 8),
                Block.Column.number("Amount", 3)),
            rows));
    if (ties.left().size() > MOST_LEFT) {
      int more = ties.left().size() - MOST_LEFT;
      blocks.add(new Block.Paragraph("And " + more + " more in figures/reconciliation.csv."));
    }
  }

  private void categories() {
    blocks.add(new Block.Heading(1, "Your words for costs, and where they count"));
    blocks.add(PrintedTables.of(tables.categories()));
  }

  private void sources() {
    blocks.add(new Block.Heading(1, "Rates and line numbers used, with their sources"));
    List<Block.Row> rows = new ArrayList<>();
    for (Rate rate : rates.used()) {
      rows.add(
          Block.Row.of(
              rate.name(), value(rate), rate.from() + " to " + rate.to(), rate.citation()));
    }
    blocks.add(
        new Block.Table(
            "",
            List.of(
                Block.Column.words("What", 7),
                Block.Column.words("Value", 4),
                Block.Column.words("In force", 6),
                Block.Column.words("Source", 9)),
            rows));
  }

  private String value(Rate rate) {
    String currency = figures.input().book().settings().currency();
    String unit = rate.unit() == RateUnit.MONEY ? currency : rate.unit().text();
    return rate.unit() == RateUnit.PERCENT ? rate.value() + " %" : rate.value() + " " + unit;
  }
}
