package clenchbook.commands;

import clenchbook.book.Payment;
import clenchbook.commands.opening.Terminal;
import clenchbook.register.SeenPayment;
import clenchbook.reports.month.MonthFindings;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

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

  /**
   * Tells it.
   *
   * @return payments that stand in the book in another form now; they need not be told of again
   */
  List<SeenPayment> tell(Terminal terminal) {
    month.differencesInWords().forEach(terminal::warn);
    List<SeenPayment> now = SeenPayment.of(payments);
    List<SeenPayment> fresh = new ArrayList<>(now);
    fresh.removeAll(seen);
    List<SeenPayment> changed = new ArrayList<>();
    for (SeenPayment payment : seen) {
      if (fresh.remove(payment.asOfNow(month.jobs().index()::ownerName))) {
        changed.add(payment);
      } else if (!now.contains(payment)) {
        Optional<SeenPayment> other = likest(payment, fresh);
        other.ifPresent(fresh::remove);
        other.ifPresent(unused -> changed.add(payment));
        terminal.warn(
            other
                .map(each -> Message.of("commands.seen.changed", inWords(payment), inWords(each)))
                .orElseGet(() -> Message.of("commands.seen.gone", inWords(payment))));
      }
    }
    return changed;
  }

  /** A payment new to the book that a mended slip may have made of this one. */
  private static Optional<SeenPayment> likest(SeenPayment gone, List<SeenPayment> fresh) {
    return Stream.<Predicate<SeenPayment>>of(
            each -> each.date().equals(gone.date()) && each.amount().equals(gone.amount()),
            each -> each.owner().equals(gone.owner()) && each.amount().equals(gone.amount()),
            each -> each.owner().equals(gone.owner()) && each.date().equals(gone.date()))
        .flatMap(alike -> fresh.stream().filter(alike))
        .findFirst();
  }

  private static Message inWords(SeenPayment payment) {
    String amount = payment.amount().toString();
    String date = payment.date().toString();
    return payment.invoice().isEmpty()
        ? Message.of("commands.seen.payment", amount, payment.owner(), date)
        : Message.of("commands.seen.paymentFor", amount, payment.owner(), date, payment.invoice());
  }
}
