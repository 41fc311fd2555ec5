package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.tax.year.YearStart;
import clenchbook.texts.InEnglish;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

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

  /** Runs some months over the book, one after the other, and issues everything. */
  public static List<BilledDocument> run(WrittenBook book, List<String> months) {
    List<BilledDocument> register = List.of();
    for (String month : months) {
      register = run(book, register, month);
    }
    return register;
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
        new YearEndInput(jobs, register, taxYear, quarter, RateFiles.bundled(), stock));
  }

  public static FigureTable table(YearEndFindings findings, String name) {
    return Stream.concat(findings.figures().stream(), findings.accountant().stream())
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

  /** Whether one of the notes holds some words. */
  public static boolean says(YearEndFindings findings, String words) {
    return notes(findings).stream().anyMatch(note -> note.contains(words));
  }

  /** What to look at, as files have it. */
  public static List<String> notes(YearEndFindings findings) {
    return findings.notes().stream().map(InEnglish::filed).toList();
  }

  /** The figures that could not be made, as files have them. */
  public static List<String> errors(YearEndFindings findings) {
    return findings.errors().stream().map(InEnglish::filed).toList();
  }

  /** Fails where the rows under a line of the summary do not add to it. */
  static void assertEveryLineOpens(YearEndFindings findings) {
    Map<String, BigDecimal> sums = new TreeMap<>();
    table(findings, "lines")
        .rows()
        .forEach(row -> sums.merge(row.get(0), new BigDecimal(row.get(5)), BigDecimal::add));
    List<List<String>> lines = table(findings, "tax-summary").rows();
    assertFalse(lines.isEmpty());
    for (List<String> line : lines) {
      BigDecimal rows = sums.getOrDefault(line.get(1), BigDecimal.ZERO);
      assertEquals(0, rows.compareTo(new BigDecimal(line.get(3))), line.toString());
    }
  }

  /** Fails where the journal is short or does not balance. */
  static void assertJournalBalances(YearEndFindings findings, int atLeast) {
    FigureTable journal = table(findings, "journal");
    assertTrue(journal.rows().size() >= atLeast);
    assertEquals(0, column(journal, "debit").compareTo(column(journal, "credit")));
  }
}
