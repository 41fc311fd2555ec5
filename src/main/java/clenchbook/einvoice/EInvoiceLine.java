package clenchbook.einvoice;

import clenchbook.book.TaxCategory;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * A line: BG-25.
 *
 * @param name BT-153: what was sold
 * @param details BT-154: what the smaller print of the invoice says, in order; may be empty
 * @param quantity BT-129; negative only where the amount is and the document takes nothing back
 * @param unit BT-130: the unit's code of UN/ECE Recommendation 20
 * @param unitPrice BT-146: without tax, of one unit; never negative
 * @param net BT-131: without tax, as the register holds it
 * @param category BT-151
 * @param ratePercent BT-152; not written for what is outside the scope of tax
 * @param day BT-134 and BT-135: the day of the visit
 */
public record EInvoiceLine(
    String name,
    List<String> details,
    BigDecimal quantity,
    String unit,
    BigDecimal unitPrice,
    BigDecimal net,
    TaxCategory category,
    BigDecimal ratePercent,
    LocalDate day) {
  /** Copies its list. */
  public EInvoiceLine {
    details = List.copyOf(details);
  }
}
