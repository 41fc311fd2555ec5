package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.RefusedCorrection;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.commands.opening.RunFault;
import clenchbook.problem.NearestName;
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
              throw new RunFault("--correct: " + inWords(refused, register) + "; nothing was done");
            });
  }

  private static String inWords(RefusedCorrection refused, List<BilledDocument> register) {
    String number = refused.number();
    String month = refused.month().map(YearMonth::toString).orElse("");
    return switch (refused.reason()) {
      case UNKNOWN ->
          "the register holds no invoice "
              + number
              + NearestName.find(number, register.stream().map(BilledDocument::number).toList())
                  .map(near -> "; is it " + near + "?")
                  .orElse("");
      case CREDIT_NOTE -> number + " is a credit note; name the invoice it takes back from";
      case DRAFT ->
          number + " is a draft still; change the book and run month-end --month " + month;
      case VOID -> number + " is void, nothing stands on it";
      case LATER ->
          number + " is of " + month + ", and a credit note is never dated before its invoice";
      case ROWS_HELD ->
          "a row of " + number + " is gone, but rows of Visits are held back; mend those first";
      case ON_DRAFT ->
          "what changed of "
              + number
              + " stands on a draft of another month; run month-end for that month";
      case OWNERS ->
          "of "
              + number
              + " only whom it is billed to changed, and that does not change an invoice that is"
              + " out; mark its row cancelled, correct and send, then take the mark off again";
      case PRICES ->
          "of "
              + number
              + " only prices, discounts or rates changed, and those do not change an invoice that"
              + " is out; type the right amount as Charge in the row of Visits";
      case NOTHING -> "the rows of " + number + " are as they were billed, nothing is to correct";
    };
  }
}
