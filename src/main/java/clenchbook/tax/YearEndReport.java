package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.assets.TakenByMileage;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.rates.MissingRate;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.rates.Standing;
import clenchbook.tax.year.Coverage;
import clenchbook.tax.year.TaxYear;
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
  private final Jurisdiction jurisdiction;
  private final List<SummaryLine> summary;
  private final List<JournalEntry> journal;
  private final Reconciliation ties;
  private final YearTables tables;
  private final RateLookup rates;
  private final Coverage coverage;
  private final PageWords words;
  private final List<Block> blocks = new ArrayList<>();

  YearEndReport(
      YearFigures figures,
      Jurisdiction jurisdiction,
      SummaryBuilder lines,
      List<JournalEntry> journal,
      Reconciliation ties,
      YearTables tables,
      RateLookup rates) {
    this.figures = figures;
    this.jurisdiction = jurisdiction;
    this.summary = lines.lines();
    this.journal = journal;
    this.ties = ties;
    this.tables = tables;
    this.rates = rates;
    this.words = PageWords.of(PageWords.ENGLISH, figures.input().translations());
    this.coverage = Coverage.of(figures.input().jobs(), figures.period());
  }

  /** Everything together. */
  YearEndFindings findings(List<TextFile> files) {
    Gauges gauges = new Gauges(figures, jurisdiction, rates);
    List<TaxTable> tax = taxTables(gauges);
    List<String> notes = new ArrayList<>(isRegistered() ? List.of() : gauges.said(words));
    notes.addAll(words.say(YearNotes.of(figures, jurisdiction, ties, rates)));
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
    tax.forEach(table -> figureTables.add(table.table()));
    Report report = report(errors, notes, tax);
    List<FigureTable> accountant =
        List.of(tables.lines(summary), tables.journal(journal), tables.assets());
    return new YearEndFindings(
        figures.period(),
        coverage,
        report,
        tables.mileageLog(),
        figureTables,
        accountant,
        errors,
        figures.billedForVisits(),
        notes,
        files);
  }

  /** Whether a Tax number is given: who is registered already needs no word about the limit. */
  private boolean isRegistered() {
    return !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
  }

  /** What every regime shows, then its own; tables without rows are left out. */
  private List<TaxTable> taxTables(Gauges gauges) {
    TaxYear year = figures.input().taxYear();
    List<TaxTable> tables =
        new ArrayList<>(new TaxTables(figures).all(summary, jurisdiction.quarters(year, rates)));
    tables.add(gauges.table());
    tables.addAll(jurisdiction.tables(figures, summary, rates));
    return tables.stream().filter(table -> !table.table().rows().isEmpty()).toList();
  }

  private Report report(List<String> errors, List<String> notes, List<TaxTable> tax) {
    blocks.add(new Block.Caution(CAUTION));
    if (!coverage.sentences().isEmpty()) {
      blocks.add(new Block.Caution(String.join(" ", words.say(coverage.sentences()))));
    }
    errors.forEach(error -> blocks.add(new Block.Caution("No figure: " + error + ".")));
    keyFigures();
    lines();
    list("What to look at", notes);
    list("What was not computed", words.say(jurisdiction.notComputed(figures)));
    beside();
    for (TaxTable table : tax) {
      blocks.add(new Block.Heading(2, table.title()));
      blocks.add(PrintedTables.of(table));
    }
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
    for (String code : jurisdiction.keyFigures()) {
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

  private Optional<SummaryLine> line(String code) {
    String number = tables.headOf(code).line();
    return summary.stream().filter(row -> row.head().line().equals(number)).findFirst();
  }

  private String money(BigDecimal amount) {
    return amount.toPlainString();
  }

  private void lines() {
    blocks.add(new Block.Heading(1, "Line by line"));
    List<SummaryLine> ofForm = summary.stream().filter(YearEndReport::isOfForm).toList();
    blocks.add(lineTable(ofForm));
    carriedOver(ofForm);
  }

  private static boolean isOfForm(SummaryLine line) {
    return line.kind() != SummaryLine.Kind.BESIDE && line.kind() != SummaryLine.Kind.TABLED;
  }

  /**
   * The number of a line, starred where it or a rate in it is carried over from an earlier year.
   */
  private static String marked(SummaryLine line) {
    boolean carried = line.head().mark().equals(Standing.CARRIED_OVER.mark());
    return carried ? line.head().line() + " *" : line.head().line();
  }

  private static String basis(SummaryLine line) {
    boolean memory = line.head().mark().equals(Standing.MEMORY.mark());
    return memory ? line.basis() + "; from memory" : line.basis();
  }

  private void carriedOver(List<SummaryLine> lines) {
    if (lines.stream().anyMatch(line -> line.head().mark().equals(Standing.CARRIED_OVER.mark()))) {
      blocks.add(
          new Block.Paragraph(
              "* carried over from the last year seen: this year's form or rate was not seen when"
                  + " the tables were made. Compare it before use; the last table gives the"
                  + " source."));
    }
  }

  private static Block lineTable(List<SummaryLine> lines) {
    return TableOf.rows(lines)
        .words("Line", 3, YearEndReport::marked)
        .words("Name", 9, line -> line.head().name())
        .amount("Amount", 3, SummaryLine::amount)
        .number("Rows", 2, YearEndReport::rows)
        .words("Basis", 5, YearEndReport::basis)
        .totalsWhere(line -> line.kind() == SummaryLine.Kind.TOTAL)
        .plain();
  }

  private static String rows(SummaryLine line) {
    long rows = line.items().stream().filter(item -> item.row() > 0).count();
    return rows == 0 ? "" : String.valueOf(rows);
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
    blocks.add(
        lineTable(
            summary.stream().filter(line -> line.kind() == SummaryLine.Kind.BESIDE).toList()));
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
      blocks.add(
          TableOf.rows(figures.assets())
              .words("Asset", 8, asset -> asset.asset().name())
              .words("Bought", 4, asset -> asset.asset().bought().toString())
              .amount("Basis", 4, DepreciatedAsset::basis)
              .words("Class", 6, this::classOf)
              .amount("Before", 4, DepreciatedAsset::before)
              .amount("This year", 4, DepreciatedAsset::thisYear)
              .number("Left", 4, asset -> asset.remaining().map(this::money).orElse("not known"))
              .plain());
    }
  }

  private String classOf(DepreciatedAsset asset) {
    List<String> words = new ArrayList<>(List.of(asset.kind(), asset.convention()));
    asset
        .mileage()
        .filter(TakenByMileage::known)
        .ifPresent(taken -> words.add("less " + money(taken.amount()) + " by mileage"));
    asset.asset().sold().ifPresent(day -> words.add("sold " + day));
    asset.gain(figures.period()).ifPresent(gain -> words.add("gain " + money(gain)));
    return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
  }

  private void reconciliation() {
    blocks.add(new Block.Heading(1, "Tied to register and book"));
    blocks.add(
        TableOf.rows(printedSteps())
            .words("Step", 12, PrintedStep::label)
            .number("Amount", 3, PrintedStep::amount)
            .totalsWhere(PrintedStep::result)
            .plain());
    left();
  }

  /** A line of the table that ties register and book; a part's name stands without an amount. */
  private record PrintedStep(String label, String amount, boolean result) {}

  private List<PrintedStep> printedSteps() {
    List<PrintedStep> printed = new ArrayList<>();
    String part = "";
    for (Reconciliation.Step step : ties.steps()) {
      if (!step.part().equals(part)) {
        part = step.part();
        printed.add(new PrintedStep(part, "", false));
      }
      printed.add(new PrintedStep(step.label(), money(step.amount()), step.result()));
    }
    return printed;
  }

  private void left() {
    if (ties.left().isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is left over."));
      return;
    }
    blocks.add(
        TableOf.rows(ties.left().stream().limit(MOST_LEFT).toList())
            .words("Row", 3, left -> left.sheet() + " " + YearTables.row(left.row()))
            .words("Date", 3, left -> left.date().toString())
            .words("Who", 5, left -> left.who())
            .words("Why", 8, left -> left.why())
            .amount("Amount", 3, left -> left.amount())
            .captioned("Left over, by row"));
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
    blocks.add(
        TableOf.rows(rates.used())
            .words("What", 7, Rate::name)
            .words("Value", 4, this::value)
            .words("In force", 6, rate -> rate.from() + " to " + rate.to())
            .words("Source", 9, Rate::citation)
            .plain());
  }

  private String value(Rate rate) {
    String currency = figures.input().book().settings().currency();
    String unit = rate.unit() == RateUnit.MONEY ? currency : rate.unit().text();
    return rate.unit() == RateUnit.PERCENT ? rate.value() + " %" : rate.value() + " " + unit;
  }
}
