package clenchbook.tax;

import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.PageTranslations;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.tax.year.YearStart;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A year's end over a book written in a test, with a register filled by running its months. */
public final class YearBook {
  private YearBook() {}

  /** Runs a month over the book as it stands and issues everything. */
  public static List<BilledDocument> run(
      WrittenBook book, List<BilledDocument> register, String month) {
    return run(book.jobs(), register, month);
  }

  public static List<BilledDocument> run(Jobs jobs, List<BilledDocument> register, String month) {
    BillingOptions options =
        new BillingOptions(YearMonth.parse(month), false, Optional.empty(), false);
    List<BilledDocument> after = new ArrayList<>();
    for (BilledDocument document : MonthBilling.decide(jobs, register, options).documents()) {
      after.add(
          document.state() == DocumentState.DRAFT ? document.in(DocumentState.ISSUED) : document);
    }
    return after;
  }

  public static YearEndFindings end(WrittenBook book, List<BilledDocument> register, int year) {
    return end(book, register, year, StockValue.NONE, Optional.empty());
  }

  public static YearEndFindings end(
      WrittenBook book,
      List<BilledDocument> register,
      int year,
      StockValue stock,
      Optional<Integer> quarter) {
    Jobs jobs = book.jobs();
    Regime regime =
        Jurisdictions.find(jobs.index().book().settings().text(Setting.TAX_REGIME))
            .orElseThrow()
            .regime();
    Settings settings = jobs.index().book().settings();
    TaxYear taxYear = TaxYear.of(regime, year, YearStart.of(regime, settings, RateFiles.bundled()));
    return YearEnd.of(
        new YearEndInput(
            jobs, register, taxYear, quarter, RateFiles.bundled(), stock, PageTranslations.read()));
  }

  public static FigureTable table(YearEndFindings findings, String name) {
    return java.util.stream.Stream.concat(
            findings.figures().stream(), findings.accountant().stream())
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The amount of a line of the summary; empty where it stands on none. */
  public static Optional<String> amount(YearEndFindings findings, String line) {
    return table(findings, "tax-summary").rows().stream()
        .filter(row -> row.get(1).equals(line))
        .map(row -> row.get(3))
        .findFirst();
  }

  public static BigDecimal column(FigureTable table, String column) {
    int at = table.columns().indexOf(column);
    return table.rows().stream()
        .map(row -> row.get(at))
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
