package clenchbook.reports.letters;

import java.math.BigDecimal;

/**
 * What stands between an invoice's total and the amount due.
 *
 * @param kind what it is
 * @param amount as it is added to the total: negative lowers the amount due
 */
public record Settlement(Kind kind, BigDecimal amount) {
  /** What a settlement is. */
  public enum Kind {
    /** Taken at the truck. */
    PAID_AT_TRUCK,
    /** Paid since by other means. */
    PAYMENT,
    /** Received on account before the work. */
    DEPOSIT,
    /** Open from earlier months, or in the owner's favour when negative. */
    BROUGHT_FORWARD
  }
}
