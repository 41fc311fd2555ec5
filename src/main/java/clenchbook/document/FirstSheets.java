package clenchbook.document;

import clenchbook.report.Addressee;
import clenchbook.report.Block;
import clenchbook.report.Chart;
import clenchbook.report.DocumentHead;
import clenchbook.report.HowToPay;
import clenchbook.report.InvoiceDocument;
import clenchbook.report.Letterhead;
import clenchbook.report.PrintLocale;
import clenchbook.report.PrintedLine;
import clenchbook.report.PrintedTotals;
import clenchbook.report.Report;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * The first sheets of a run, printed to nowhere. The first invoice of a process takes a hundred
 * times as long as the tenth, since the report library, the fonts and the templates must be loaded;
 * done while the book is still being read, that time costs the farrier nothing.
 */
public final class FirstSheets {
  private static final int TIMES = 4;
  private static final LocalDate DAY = LocalDate.EPOCH;
  private static final PrintLocale LOCALE = new PrintLocale("en", "GB");

  private FirstSheets() {}

  /**
   * Prints an invoice a few times over and throws it away; by then Java has seen which of the
   * library's methods are worth compiling.
   */
  public static void letter() {
    PdfDocuments documents = documents();
    for (int i = 0; i < TIMES; i++) {
      documents.invoice(invoice());
    }
  }

  /** Prints a report with a table and a picture and throws it away. */
  public static void report() {
    documents().report(pages());
  }

  private static PdfDocuments documents() {
    return new PdfDocuments(new PrintSettings(DAY, LOCALE, "", Optional.empty(), Optional.empty()));
  }

  private static InvoiceDocument invoice() {
    Letterhead from =
        new Letterhead(
            "Ahead",
            List.of("Lane"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    PrintedLine line =
        new PrintedLine(
            DAY,
            "Horse",
            "Work",
            List.of("hot"),
            Optional.empty(),
            Optional.empty(),
            BigDecimal.ONE,
            "",
            false);
    return new InvoiceDocument(
        new DocumentHead(
            from,
            new Addressee("Owner", List.of("Lane"), Optional.empty()),
            "1",
            DAY,
            LOCALE,
            "GBP"),
        YearMonth.from(DAY),
        DAY,
        List.of(line),
        new PrintedTotals(false, BigDecimal.ONE, List.of(), BigDecimal.ZERO, BigDecimal.ONE),
        List.of(),
        BigDecimal.ONE,
        new HowToPay(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
        List.of(),
        List.of());
  }

  private static Report pages() {
    return new Report(
        "ahead",
        "Ahead",
        "",
        "",
        List.of(
            new Block.Heading(1, "Figures"),
            new Block.Paragraph("Words."),
            new Block.Table(
                "Table",
                List.of(Block.Column.words("Work", 2), Block.Column.number("Hours", 1)),
                List.of(Block.Row.of("Trim", "1"), Block.Row.total("All", "1"))),
            picture(columns()),
            picture(lines())));
  }

  private static Block picture(Chart chart) {
    return new Block.Picture("Picture", "Words.", chart);
  }

  private static Chart columns() {
    return new Chart.Columns(
        "Month",
        "Hours",
        List.of("May", "June"),
        List.of(new Chart.Series("Work", List.of(1.0, 2.0))),
        true,
        false,
        List.of(new Chart.Limit("limit", 2)));
  }

  private static Chart lines() {
    List<Chart.Point> points = List.of(new Chart.Point(0, 0), new Chart.Point(1, 1));
    return new Chart.Lines(
        "Jobs",
        "Money",
        List.of(new Chart.Line("hot", points, false)),
        List.of(),
        List.of(new Chart.Limit("even", 1)));
  }
}
