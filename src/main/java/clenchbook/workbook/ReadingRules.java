package clenchbook.workbook;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How texts of one book are read: its decimal mark, its order of dates, its currency. */
final class ReadingRules {
  private static final int MOST_KEPT = 100_000;

  private final NumberText numbers;
  private final MoneyText money;
  private final MinutesText minutes;
  private final Optional<DateText.Order> dateOrder;
  private final boolean from1904;
  private final Map<String, String> kept = new HashMap<>();

  ReadingRules(
      Locale locale,
      Optional<String> currency,
      Optional<DateText.Order> dateOrder,
      boolean from1904) {
    this.numbers = new NumberText(locale);
    this.money = new MoneyText(numbers, currency);
    this.minutes = new MinutesText(numbers);
    this.dateOrder = dateOrder;
    this.from1904 = from1904;
  }

  NumberText numbers() {
    return numbers;
  }

  MoneyText money() {
    return money;
  }

  MinutesText minutes() {
    return minutes;
  }

  Optional<DateText.Order> dateOrder() {
    return dateOrder;
  }

  boolean from1904() {
    return from1904;
  }

  /** One copy of equal texts: a book names the same few horses and owners thousands of times. */
  String once(String text) {
    String first = kept.size() < MOST_KEPT ? kept.putIfAbsent(text, text) : kept.get(text);
    return first == null ? text : first;
  }
}
