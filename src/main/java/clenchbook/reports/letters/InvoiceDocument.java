package clenchbook.reports.letters;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * An invoice, ready to print. Every amount is exact in the currency's minor unit and is printed as
 * it is; nothing is added up here.
 *
 * @param head farrier, owner, number and date
 * @param month the month whose work it bears
 * @param due the last day to pay
 * @param lines in the order they are printed
 * @param totals the sums of the lines
 * @param settlements what lies between the total and the amount due, in order
 * @param amountDue what is left to pay; negative is in the owner's favour
 * @param pay how to pay
 * @param nextVisits when its horses are next due, in order
 * @param beside the numbers of the same month's invoices that bear what is treated otherwise for
 *     tax
 * @param replaces whose lines it bills anew
 * @param remarks further sentences, already in the document's language
 */
public record InvoiceDocument(
    DocumentHead head,
    YearMonth month,
    LocalDate due,
    List<PrintedLine> lines,
    PrintedTotals totals,
    List<Settlement> settlements,
    BigDecimal amountDue,
    HowToPay pay,
    List<NextVisit> nextVisits,
    List<String> beside,
    List<Replaced> replaces,
    List<String> remarks) {
  /** Copies its lists. */
  public InvoiceDocument {
    lines = List.copyOf(lines);
    settlements = List.copyOf(settlements);
    nextVisits = List.copyOf(nextVisits);
    beside = List.copyOf(beside);
    replaces = List.copyOf(replaces);
    remarks = List.copyOf(remarks);
  }

  /**
   * Lines that a credit note took back and that this invoice bills anew.
   *
   * @param creditNote the credit note's number
   * @param invoice the number of the invoice they stood on before
   */
  public record Replaced(String creditNote, String invoice) {}

  /** An invoice beside which there is no other, and that replaces none. */
  public InvoiceDocument(
      DocumentHead head,
      YearMonth month,
      LocalDate due,
      List<PrintedLine> lines,
      PrintedTotals totals,
      List<Settlement> settlements,
      BigDecimal amountDue,
      HowToPay pay,
      List<NextVisit> nextVisits,
      List<String> remarks) {
    this(
        head,
        month,
        due,
        lines,
        totals,
        settlements,
        amountDue,
        pay,
        nextVisits,
        List.of(),
        List.of(),
        remarks);
  }
}
