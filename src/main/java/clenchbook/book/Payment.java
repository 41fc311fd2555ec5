package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One row of Payments.
 *
 * @param source the row it was read from
 * @param date the day received or paid out
 * @param owner whose
 * @param amount how much, never negative: a minus in the cell counts for nothing, since the kind
 *     says which way the money went
 * @param invoice the invoice it names; empty = the oldest
 * @param kind what it is
 * @param how cash, card, transfer and the like
 * @param reference free text
 */
public record Payment(
    SourceRow source,
    LocalDate date,
    String owner,
    BigDecimal amount,
    String invoice,
    PaymentKind kind,
    String how,
    String reference) {
  /** Keeps the size of the amount alone. */
  public Payment {
    amount = amount.abs();
  }

  /**
   * The same row naming another owner.
   *
   * @param name the owner
   * @return the row
   */
  public Payment by(String name) {
    return new Payment(source, date, name, amount, invoice, kind, how, reference);
  }
}
