package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.RefusedCorrection;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.commands.opening.RunFault;
import clenchbook.problem.NearestName;
import clenchbook.texts.Message;
import java.time.YearMonth;
import java.util.List;

/** The option {@code --correct}: a correction that is none ends the run before anything changes. */
final class CorrectionAsked {
  private CorrectionAsked() {}

  /**
   * Makes sure that what was asked for is corrected.
   *
   * @throws RunFault where nothing is
   */
  static void check(
      String number, List<BilledDocument> register, BillingDecision decision, YearMonth month) {
    RefusedCorrection.of(number, register, decision, month)
        .ifPresent(
            refused -> {
              throw new RunFault(Message.of("commands.correct.refused", why(refused, register)));
            });
  }

  private static Message why(RefusedCorrection refused, List<BilledDocument> register) {
    String number = refused.number();
    String month = refused.month().map(YearMonth::toString).orElse("");
    return switch (refused.reason()) {
      case UNKNOWN -> unknown(number, register);
      case CREDIT_NOTE -> Message.of("commands.correct.creditNote", number);
      case DRAFT -> Message.of("commands.correct.draft", number, month);
      case VOID -> Message.of("commands.correct.void", number);
      case LATER -> Message.of("commands.correct.later", number, month);
      case ROWS_HELD -> Message.of("commands.correct.rowsHeld", number);
      case ON_DRAFT -> Message.of("commands.correct.onDraft", number);
      case OWNERS -> Message.of("commands.correct.owners", number);
      case PRICES -> Message.of("commands.correct.prices", number);
      case NOTHING -> Message.of("commands.correct.nothing", number);
    };
  }

  private static Message unknown(String number, List<BilledDocument> register) {
    List<String> known = register.stream().map(BilledDocument::number).toList();
    return NearestName.find(number, known)
        .map(near -> Message.of("commands.correct.unknownNear", number, near))
        .orElseGet(() -> Message.of("commands.correct.unknown", number));
  }
}
