package clenchbook.billing.accounts;

import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Up to which day money from the bank was entered: beyond it nobody knows who has paid, so nobody
 * is pressed for what fell due since.
 */
public final class EnteredPayments {
  /** Money from hand to hand says nothing of what lies in the bank. Five languages. */
  private static final Set<String> BY_HAND =
      Set.of(
          "cash",
          "card",
          "bar",
          "karte",
          "espèces",
          "especes",
          "carte",
          "efectivo",
          "tarjeta",
          "contant",
          "pin",
          "kaart");

  private EnteredPayments() {}

  /**
   * The day of the latest payment.
   *
   * @param payments the rows of Payments
   * @param last rows after this day do not count
   * @return the latest day of money that was not taken by hand, else of any; what was written off
   *     and tips do not count; empty where nothing is entered
   */
  public static Optional<LocalDate> upTo(List<Payment> payments, LocalDate last) {
    List<Payment> moved =
        payments.stream()
            .filter(row -> !row.date().isAfter(last))
            .filter(row -> row.kind() != PaymentKind.WRITTEN_OFF && row.kind() != PaymentKind.TIP)
            .toList();
    return latest(moved.stream().filter(row -> !isByHand(row)).toList()).or(() -> latest(moved));
  }

  private static Optional<LocalDate> latest(List<Payment> rows) {
    return rows.stream().map(Payment::date).max(LocalDate::compareTo);
  }

  /**
   * Whether a payment was taken by hand.
   *
   * @param payment a row of Payments
   * @return true for cash and card, as far as How says so
   */
  public static boolean isByHand(Payment payment) {
    return BY_HAND.contains(Names.key(payment.how()));
  }
}
