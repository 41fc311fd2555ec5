package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.MissingRate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Coverage;
import clenchbook.tax.year.TaxYear;
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
    List<Sentence> look = YearNotes.of(figures, jurisdiction, ties, rates);
    List<MissingRate> missing = rates.missing();
    List<String> errors = MissingRate.sentences(missing);
    YearPages pages = new YearPages(figures, jurisdiction, summary, tables, coverage, gauges, tax);
    List<String> notes = notes(gauges, look);
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

  private List<String> notes(Gauges gauges, List<Sentence> look) {
    PageWords english = PageWords.of(PageWords.ENGLISH, figures.input().translations());
    List<String> notes = new ArrayList<>(isRegistered() ? List.of() : gauges.said(english));
    look.forEach(sentence -> notes.add(sentence.inEnglish()));
    return notes;
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
      Gauges gauges, List<TaxTable> tax, List<String> errors, List<String> notes) {
    List<FigureTable> all = new ArrayList<>();
    all.add(tables.summary(summary, errors));
    all.add(tables.mileage());
    all.add(tables.flags());
    all.add(tables.reconstructed());
    all.add(tables.categories());
    all.add(tables.reconciliation(ties));
    all.add(tables.rates());
    gauges.figures().ifPresent(all::add);
    tax.forEach(table -> all.add(table.table()));
    all.add(looked(notes));
    return all;
  }

  /** What the pages say in sentences, so that every number in them stands in a file too. */
  private FigureTable looked(List<String> notes) {
    List<List<String>> rows = new ArrayList<>();
    coverage.sentences().forEach(one -> rows.add(List.of("coverage", one.inEnglish())));
    notes.forEach(note -> rows.add(List.of("look at", note)));
    jurisdiction
        .notComputed(figures)
        .forEach(one -> rows.add(List.of("not computed", one.inEnglish())));
    return new FigureTable("what-to-look-at", List.of("kind", "sentence"), rows);
  }

  /**
   * In the farrier's own language where the country's page speaks it, then in its others, then the
   * evidence, which is in English alone.
   */
  private List<Report> reports(YearPages pages, List<Sentence> look, List<MissingRate> missing) {
    String own = figures.input().book().settings().text(Setting.LANGUAGE);
    List<String> spoken = jurisdiction.languages();
    String first = spoken.contains(own) ? own : PageWords.ENGLISH;
    List<Report> reports = new ArrayList<>();
    reports.add(new PreparerPage(pages, first).report(FILE, look, missing));
    spoken.stream()
        .filter(language -> !language.equals(first))
        .forEach(
            language ->
                reports.add(
                    new PreparerPage(pages, language)
                        .report(FILE + "." + language, look, missing)));
    reports.add(
        new PreparerPage(pages, PageWords.ENGLISH)
            .annex(FILE, new AnnexPages(pages, ties, rates).blocks()));
    return reports;
  }
}
