package clenchbook.reports.month;

import clenchbook.billing.corrections.Difference.Changed;
import clenchbook.reports.blocks.FigureText;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;

/** What changed of a visit that is billed: {@code date 3 Oct → 5 Oct}. */
final class ChangeWords {
  private static final String TO = " → ";

  private ChangeWords() {}

  /** For files: dates and amounts as they stand in files. */
  static String inFiles(List<Changed> changes) {
    return words(changes, "; ", (before, after) -> before + TO + after);
  }

  /** For people: days as the book's language writes them. */
  static String inWords(List<Changed> changes, FigureText text) {
    return words(
        changes,
        ", ",
        (before, after) -> {
          LocalDate then = LocalDate.parse(before);
          LocalDate now = LocalDate.parse(after);
          return then.getYear() == now.getYear()
              ? text.shortDay(then) + TO + text.shortDay(now)
              : text.date(then) + TO + text.date(now);
        });
  }

  private static String words(List<Changed> changes, String between, BinaryOperator<String> days) {
    return changes.stream().map(change -> words(change, days)).collect(Collectors.joining(between));
  }

  private static String words(Changed change, BinaryOperator<String> days) {
    String both = change.before() + TO + change.after();
    return switch (change.what()) {
      case DATE -> "date " + days.apply(change.before(), change.after());
      case HORSE -> "horse " + both;
      case WORK -> "work " + both;
      case CHARGE -> "charge " + both;
      case PRICE -> "price " + both;
      case OWNER -> "billed to " + both;
      case SHARE -> "shares in per cent " + both;
      case GONE -> "the row is gone";
      case CANCELLED -> "the row is cancelled";
      case TWICE -> "billed by " + change.before() + " too";
    };
  }
}
