package clenchbook.reports.letters;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A movement on an owner's account.
 *
 * @param date its day
 * @param kind what it is
 * @param reference the document's number or the payment's reference; may be empty
 * @param amount as it changes the balance: an invoice is positive, a payment negative
 * @param balance the balance after it
 */
public record StatementEntry(
    LocalDate date, Kind kind, String reference, BigDecimal amount, BigDecimal balance) {
  /** What a movement is. */
  public enum Kind {
    /** An invoice. */
    INVOICE,
    /** A credit note. */
    CREDIT_NOTE,
    /** Taken at the truck. */
    PAID_AT_TRUCK,
    /** A payment. */
    PAYMENT,
    /** Received on account. */
    DEPOSIT,
    /** Paid back to the owner. */
    REFUND,
    /** Written off: the balance is lowered, nothing was paid. */
    WRITTEN_OFF
  }
}
