package clenchbook.print.pdf;

import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.HowToPay;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.Letterhead;
import clenchbook.reports.letters.PrintLocale;
import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedTotals;
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
  private static final int TIMES = 2;
  private static final LocalDate DAY = LocalDate.EPOCH;
  private static final PrintLocale LOCALE = new PrintLocale("en", "GB");

  private FirstSheets() {}

  /**
   * Prints an invoice twice over and throws it away. Reports are left out: what they alone need is
   * loaded just as fast when the first is printed beside the figures.
   */
  public static void letter() {
    PdfDocuments documents = documents();
    for (int i = 0; i < TIMES; i++) {
      documents.invoice(invoice());
    }
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
}
