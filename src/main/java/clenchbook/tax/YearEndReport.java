package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.NamedRows;
import clenchbook.reports.blocks.Report;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.MissingRate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Coverage;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.util.ArrayList;
import java.util.List;

/** Everything the year's end says, as tables for files and pages for the preparer. */
final class YearEndReport {
  private static final String FILE = "tax-summary";

  private final YearFigures figures;
  private final Jurisdiction jurisdiction;
  private final List<SummaryLine> summary;
  private final List<JournalEntry> journal;
  private final Reconciliation ties;
  private final YearTables tables;
  private final RateLookup rates;
  private final Coverage coverage;

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
    this.coverage = Coverage.of(figures.input().jobs(), figures.period());
  }

  /** Everything together. */
  YearEndFindings findings(List<TextFile> files) {
    Gauges gauges = new Gauges(figures, jurisdiction, rates);
    List<TaxTable> tax = taxTables();
    List<Message> look = YearNotes.of(figures, jurisdiction, ties, rates);
    List<MissingRate> missing = rates.missing();
    List<Message> errors = MissingRate.said(missing);
    YearPages pages = new YearPages(figures, jurisdiction, summary, tables, coverage, gauges, tax);
    List<Message> notes = new ArrayList<>(isRegistered() ? List.of() : gauges.said());
    notes.addAll(look);
    return new YearEndFindings(
        figures.period(),
        coverage,
        reports(pages, look, missing),
        tables.mileageLog(),
        figureTables(gauges, tax, errors, notes),
        List.of(tables.lines(summary), tables.journal(journal), tables.assets()),
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
  private List<TaxTable> taxTables() {
    TaxYear year = figures.input().taxYear();
    List<TaxTable> all = new ArrayList<>(jurisdiction.tables(figures, summary, rates));
    all.addAll(new TaxTables(figures).all(summary, jurisdiction.quarters(year, rates)));
    return all.stream().filter(table -> !table.table().rows().isEmpty()).toList();
  }

  private List<FigureTable> figureTables(
      Gauges gauges, List<TaxTable> tax, List<Message> errors, List<Message> notes) {
    Texts files = figures.input().book().settings().texts().forFiles();
    List<FigureTable> all = new ArrayList<>();
    all.add(tables.summary(summary, errors.stream().map(files::say).toList()));
    all.add(tables.mileage());
    all.add(tables.flags().table());
    all.add(tables.reconstructed().table());
    all.add(tables.categories().table());
    all.add(tables.reconciliation(ties));
    all.add(tables.rates());
    gauges.figures().ifPresent(all::add);
    tax.forEach(table -> all.add(table.table()));
    all.add(looked(notes, files));
    return all;
  }

  /** What the pages say in sentences, so that every number in them stands in a file too. */
  private FigureTable looked(List<Message> notes, Texts files) {
    NamedRows rows = NamedRows.of("kind", "sentence");
    add(rows, "coverage", coverage.sentences(), files);
    add(rows, "look at", notes, files);
    add(rows, "not computed", jurisdiction.notComputed(figures), files);
    return rows.named("what-to-look-at");
  }

  private static void add(NamedRows rows, String kind, List<Message> sentences, Texts files) {
    sentences.forEach(one -> rows.row().put("kind", kind).put("sentence", files.say(one)));
  }

  /**
   * In the farrier's own language, then in the others that a preparer there reads, then the
   * evidence. A language whose texts are not all there has no page.
   */
  private List<Report> reports(YearPages pages, List<Message> look, List<MissingRate> missing) {
    Texts own = figures.input().book().settings().texts();
    PreparerPage first = new PreparerPage(pages, own);
    List<Report> reports = new ArrayList<>();
    reports.add(first.report(FILE, look, missing));
    for (String language : jurisdiction.languages()) {
      Texts other = own.in(language);
      if (!language.equals(own.spoken()) && other.spoken().equals(language)) {
        reports.add(new PreparerPage(pages, other).report(FILE + "." + language, look, missing));
      }
    }
    reports.add(first.annex(FILE, new AnnexPages(pages, ties, rates, own).blocks()));
    return reports;
  }
}
