package clenchbook.reports.month;

import clenchbook.billing.numbering.PaymentReferences;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.Message;
import java.util.List;

/** What the register's numbers say against creditor references. */
public final class ReferenceRules {
  private ReferenceRules() {}

  /**
   * The problem of references that can't be told apart.
   *
   * @param settings the settings
   * @param references the references of all documents
   * @param told the book's own problems; one that refuses references already is enough
   * @return one problem, or none
   */
  public static List<Problem> problems(
      Settings settings, PaymentReferences references, List<Problem> told) {
    boolean known = told.stream().anyMatch(each -> each.kind() == ProblemKind.REFERENCE_REFUSED);
    if (known || references.refusal().isEmpty()) {
      return List.of();
    }
    return List.of(
        Problem.warning(
            ProblemKind.REFERENCE_REFUSED,
            settings.place(Setting.PAYMENT_REFERENCE),
            references.refusal().get(),
            Message.of("billing.reference.numbersThatDiffer"),
            settings.text(Setting.PAYMENT_REFERENCE)));
  }
}
