package clenchbook.reports.month;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.jobs.VisitNames;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Payments that name an invoice which the register does not hold. */
public final class PaymentRules {
  private PaymentRules() {}

  /**
   * Checks the invoices that payments name.
   *
   * @param payments the rows of Payments
   * @param documents all documents of the register
   * @param openingDate payments before it do not count, and are not asked
   * @return a warning for each unknown number; the payment goes to the oldest invoice
   */
  public static List<Problem> problems(
      List<Payment> payments, List<BilledDocument> documents, LocalDate openingDate) {
    Set<String> known =
        documents.stream().map(d -> Names.key(d.number())).collect(Collectors.toSet());
    List<String> numbers = documents.stream().map(BilledDocument::number).toList();
    List<Problem> problems = new ArrayList<>();
    for (Payment payment : payments) {
      boolean asked = !payment.invoice().isEmpty() && !payment.date().isBefore(openingDate);
      if (asked && !known.contains(Names.key(payment.invoice()))) {
        problems.add(
            Problem.warning(
                ProblemKind.INVOICE_UNKNOWN,
                payment.source().at("Invoice"),
                Message.of("month.payments.noInvoice", payment.invoice()),
                VisitNames.offer(
                    Message.of("month.payments.anInvoice"), payment.invoice(), numbers),
                payment.invoice()));
      }
    }
    return problems;
  }
}
