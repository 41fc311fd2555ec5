package clenchbook.comparison;

import clenchbook.comparison.breakeven.Sensitivity;
import clenchbook.comparison.breakeven.Shift;
import clenchbook.texts.Message;

/** The inputs a fifth less or more, each in texts of its own. */
final class FifthTexts {
  private FifthTexts() {}

  /** The name of a bar. */
  static Message bar(Shift shift) {
    return Message.of(
        switch (shift.name()) {
          case "steel" -> "comparison.fifth.bar.steel";
          case "gas" -> "comparison.fifth.bar.gas";
          case "wage" -> "comparison.fifth.bar.wage";
          case "minutes" -> "comparison.fifth.bar.minutes";
          case "price" -> "comparison.fifth.bar.price";
          default -> throw new IllegalStateException("no text for " + shift.name());
        },
        more(shift.percent()));
  }

  /** The input that matters, and what it changes. */
  static Message matters(Sensitivity most, String change) {
    return Message.of(
        switch (most.input()) {
          case "steel" -> "comparison.fifth.matters.steel";
          case "gas" -> "comparison.fifth.matters.gas";
          case "wage" -> "comparison.fifth.matters.wage";
          case "minutes" -> "comparison.fifth.matters.minutes";
          case "price" -> "comparison.fifth.matters.price";
          default -> throw new IllegalStateException("no text for " + most.input());
        },
        more(most.percent()),
        change);
  }

  private static int more(int percent) {
    return percent < 0 ? 0 : 1;
  }
}
