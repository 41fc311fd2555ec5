package clenchbook.reports.month;

import clenchbook.billing.corrections.Difference.Changed;
import clenchbook.reports.blocks.FigureText;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What changed of a visit that is billed: {@code date 3 Oct → 5 Oct}. */
final class ChangeWords {
  private static final String TO = " → ";

  private ChangeWords() {}

  /** For files: dates and amounts as they stand in files. */
  static String inFiles(List<Changed> changes) {
    return changes.stream().map(ChangeWords::inFiles).collect(Collectors.joining("; "));
  }

  /** For people: days and amounts as the book's language and country write them. */
  static String inWords(List<Changed> changes, FigureText text) {
    return changes.stream().map(each -> inWords(each, text)).collect(Collectors.joining(", "));
  }

  private static String days(Changed change, FigureText text) {
    LocalDate then = LocalDate.parse(change.before());
    LocalDate now = LocalDate.parse(change.after());
    return then.getYear() == now.getYear()
        ? text.shortDay(then) + TO + text.shortDay(now)
        : text.date(then) + TO + text.date(now);
  }

  private static String amounts(Changed change, FigureText text) {
    return text.amount(new BigDecimal(change.before()))
        + TO
        + text.amount(new BigDecimal(change.after()));
  }

  /** Apart by a sign that is no decimal one in any language. */
  private static String shares(String several, FigureText text) {
    return Stream.of(several.split(", "))
        .map(share -> text.plain(new BigDecimal(share)))
        .collect(Collectors.joining("; "));
  }

  private static String inWords(Changed change, FigureText text) {
    String both = change.before() + TO + change.after();
    return switch (change.what()) {
      case DATE -> text.say("month.change.date", days(change, text));
      case HORSE -> text.say("month.change.horse", both);
      case WORK -> text.say("month.change.work", both);
      case CHARGE -> text.say("month.change.charge", amounts(change, text));
      case PRICE -> text.say("month.change.price", amounts(change, text));
      case OWNER -> text.say("month.change.owner", both);
      case SHARE ->
          text.say(
              "month.change.share",
              shares(change.before(), text) + TO + shares(change.after(), text));
      case GONE -> text.say("month.change.gone");
      case CANCELLED -> text.say("month.change.cancelled");
      case TWICE -> text.say("month.change.twice", change.before());
    };
  }

  private static String inFiles(Changed change) {
    String both = change.before() + TO + change.after();
    return switch (change.what()) {
      case DATE -> "date " + both;
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
