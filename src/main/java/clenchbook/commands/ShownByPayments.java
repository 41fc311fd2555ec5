package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.commands.opening.Terminal;
import clenchbook.texts.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Drafts that a run issues since a payment names them, or one that goes out with them. */
final class ShownByPayments {
  private ShownByPayments() {}

  /**
   * Tells of them: nobody has sent them.
   *
   * @param before the documents before the run
   * @param decision what was decided
   * @param payments the rows of Payments
   * @param sum writes documents and amounts
   */
  static void tell(
      List<BilledDocument> before,
      BillingDecision decision,
      List<Payment> payments,
      MonthSum sum,
      Terminal terminal) {
    Set<String> out = new HashSet<>();
    before.stream()
        .filter(document -> document.state().fixed())
        .forEach(document -> out.add(document.number()));
    Set<String> named = new HashSet<>();
    payments.forEach(payment -> named.add(Names.key(payment.invoice())));
    for (BilledDocument document : decision.documents()) {
      if (document.state().fixed() && !out.contains(document.number())) {
        terminal.say(
            named.contains(Names.key(document.number()))
                ? Message.of("commands.shown.named", sum.line(document))
                : Message.of("commands.shown.with", sum.line(document)));
      }
    }
  }
}
