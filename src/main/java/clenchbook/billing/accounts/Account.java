package clenchbook.billing.accounts;

import clenchbook.book.PaymentKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * One owner's account as at a month's last day. Brought forward plus invoiced less paid is the
 * balance; the four ages add to it.
 *
 * @param owner the owner
 * @param broughtForward the balance on the evening before the month
 * @param invoiced the month's invoices less its credit notes
 * @param paid the month's payments, deposits, written-off amounts and money taken at the truck,
 *     less refunds; never tips
 * @param balance what is owed; negative in the owner's favour
 * @param ageing the balance by days past due; credit stands in the first
 * @param asked the balance by days past due as at the day up to which payments were entered, which
 *     is what a reminder may speak of; nothing is past due where none were
 * @param movements the month's movements, in order
 * @param open what of each document is still open, by number
 * @param settledBy what of each document was written off, by number
 * @param olderMoved true when a movement of the month touched an older document
 */
public record Account(
    String owner,
    BigDecimal broughtForward,
    BigDecimal invoiced,
    BigDecimal paid,
    BigDecimal balance,
    Ages ageing,
    Ages asked,
    List<Movement> movements,
    Map<String, BigDecimal> open,
    Map<String, BigDecimal> settledBy,
    boolean olderMoved) {
  /** Copies its collections. */
  public Account {
    movements = List.copyOf(movements);
    open = Map.copyOf(open);
    settledBy = Map.copyOf(settledBy);
  }

  /**
   * A balance by days past due.
   *
   * @param current not yet due, less credit
   * @param pastDue1To30 1 to 30 days past due
   * @param pastDue31To60 31 to 60 days past due
   * @param pastDueOver60 more
   */
  public record Ages(
      BigDecimal current,
      BigDecimal pastDue1To30,
      BigDecimal pastDue31To60,
      BigDecimal pastDueOver60) {}

  /** What moved an account. */
  public enum Source {
    /** A document. */
    DOCUMENT,
    /** Money taken at the truck. */
    TRUCK,
    /** A row of Payments. */
    PAYMENT
  }

  /**
   * A movement.
   *
   * @param date the day
   * @param source what moved it
   * @param kind the payment's kind; payment for the truck and documents
   * @param reference a document's number, or what the payment names
   * @param amount as it changes the balance: documents as charged, payments negative, refunds
   *     positive
   */
  public record Movement(
      LocalDate date, Source source, PaymentKind kind, String reference, BigDecimal amount) {}
}
