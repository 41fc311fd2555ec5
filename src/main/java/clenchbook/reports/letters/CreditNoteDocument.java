package clenchbook.reports.letters;

import java.time.LocalDate;
import java.util.List;

/**
 * A credit note, ready to print; it says in words which invoice it takes back and by how much.
 *
 * @param head farrier, owner, number and date
 * @param invoiceNumber the invoice that is corrected
 * @param invoiceDate that invoice's date
 * @param lines the lines taken back; their amounts are negative
 * @param totals the sums of the lines, negative
 * @param replacedOn the numbers of the owner's invoices that bill these visits anew
 * @param remarks further sentences, already in the document's language
 */
public record CreditNoteDocument(
    DocumentHead head,
    String invoiceNumber,
    LocalDate invoiceDate,
    List<PrintedLine> lines,
    PrintedTotals totals,
    List<String> replacedOn,
    List<String> remarks) {
  /** Copies its lists. */
  public CreditNoteDocument {
    lines = List.copyOf(lines);
    replacedOn = List.copyOf(replacedOn);
    remarks = List.copyOf(remarks);
  }
}
