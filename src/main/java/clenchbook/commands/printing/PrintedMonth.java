package clenchbook.commands.printing;

import clenchbook.commands.opening.Terminal;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.register.Register;
import clenchbook.reports.month.BilledMonth;
import java.util.Map;
import java.util.Optional;

/**
 * A month's letters as PDF: issued ones with the bytes they went out with, the rest printed now.
 *
 * @param month the month
 * @param drafts what was printed now, by number
 * @param eInvoices structured invoices made now that are files of their own, by number
 * @param files all letters, by their path among the month's files
 */
public record PrintedMonth(
    BilledMonth month,
    Map<String, byte[]> drafts,
    Map<String, byte[]> eInvoices,
    Map<String, byte[]> files) {
  /**
   * Prints what is not kept.
   *
   * @param register where the bytes of issued documents are; empty where there is no register yet
   */
  public static PrintedMonth of(
      BilledMonth month, Optional<Register> register, PdfDocuments documents, Terminal terminal) {
    try (Printing printing = new Printing()) {
      LettersInPrint letters = LettersInPrint.begin(month, register, documents, printing);
      return new PrintedMonth(
          month, letters.printed(terminal), letters.eInvoices(terminal), letters.files(terminal));
    }
  }
}
