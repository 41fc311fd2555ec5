package clenchbook.register;

import clenchbook.book.Payment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * A payment that a run has seen in the book.
 *
 * @param date ISO date
 * @param owner the owner as written
 * @param amount the amount, plain
 * @param invoice the invoice it names; may be empty
 * @param kind its kind, in the book's word
 * @param reference free text
 * @param occurrence which of equal payments, from 1
 */
public record SeenPayment(
    String date,
    String owner,
    String amount,
    String invoice,
    String kind,
    String reference,
    int occurrence) {

  /**
   * The payments of a book.
   *
   * @param payments the rows of Payments, in order
   * @return one each, equal ones told apart by their occurrence
   */
  public static List<SeenPayment> of(List<Payment> payments) {
    Map<SeenPayment, Integer> times = new HashMap<>();
    List<SeenPayment> seen = new ArrayList<>();
    for (Payment payment : payments) {
      SeenPayment first = first(payment);
      seen.add(first.at(times.merge(first, 1, Integer::sum)));
    }
    return seen;
  }

  private static SeenPayment first(Payment payment) {
    return new SeenPayment(
        payment.date().toString(),
        payment.owner(),
        payment.amount().stripTrailingZeros().toPlainString(),
        payment.invoice(),
        payment.kind().word(),
        payment.reference(),
        1);
  }

  private SeenPayment at(int time) {
    return new SeenPayment(date, owner, amount, invoice, kind, reference, time);
  }

  /**
   * The payment as it is written now: owners go by their name of now, and a size has no sign.
   *
   * @param current the name of now for each
   * @return the payment
   */
  public SeenPayment asOfNow(UnaryOperator<String> current) {
    String size = amount.startsWith("-") ? amount.substring(1) : amount;
    return new SeenPayment(date, current.apply(owner), size, invoice, kind, reference, occurrence);
  }
}
