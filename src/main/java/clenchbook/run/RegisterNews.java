package clenchbook.run;

import clenchbook.book.Payment;
import clenchbook.month.MonthFindings;
import clenchbook.register.SeenPayment;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What the farrier should hear of at once: differences with documents that are out. */
final class RegisterNews {
  private final MonthFindings month;
  private final List<SeenPayment> seen;
  private final List<Payment> payments;

  RegisterNews(MonthFindings month, List<SeenPayment> seen, List<Payment> payments) {
    this.month = month;
    this.seen = seen;
    this.payments = payments;
  }

  void tell(Terminal terminal) {
    month.differencesInWords().forEach(terminal::warn);
    Set<SeenPayment> now = new HashSet<>(SeenPayment.of(payments));
    for (SeenPayment payment : seen) {
      if (!now.contains(payment)) {
        terminal.warn(
            "a payment of "
                + payment.amount()
                + " by "
                + payment.owner()
                + " on "
                + payment.date()
                + " was in the book once and is not any more");
      }
    }
  }
}
