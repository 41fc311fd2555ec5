package clenchbook.reading.cells;

import clenchbook.reading.words.DateWords;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** Days written without their year, in a sheet of one month. */
final class DayOfMonth {
  private static final int LONGEST = 40;
  private static final int MONTHS = 12;

  private DayOfMonth() {}

  /** The day that 14, 14th, Tue 14, 14.3. or 14 Mar means; empty for any other text. */
  static Optional<LocalDate> in(YearMonth month, String text) {
    String bare = text.strip();
    List<String> parts = bare.length() > LONGEST ? List.of() : DateText.tokens(bare);
    return switch (parts.size()) {
      case 1 -> day(month, parts.get(0));
      case 2 -> withMonth(month, parts.get(0), parts.get(1));
      default -> Optional.empty();
    };
  }

  private static Optional<LocalDate> day(YearMonth month, String part) {
    int day = shortNumber(part);
    return day >= 1 && day <= month.lengthOfMonth()
        ? Optional.of(month.atDay(day))
        : Optional.empty();
  }

  /**
   * The day beside the month itself. Of two numbers the first is the day, unless the second can be
   * no month; what may be a day of another month is none of this one.
   */
  private static Optional<LocalDate> withMonth(YearMonth month, String first, String second) {
    if (isMonth(month, second)) {
      return day(month, first);
    }
    boolean monthFirst = !DateText.isNumber(first) || shortNumber(second) > MONTHS;
    return monthFirst && isMonth(month, first) ? day(month, second) : Optional.empty();
  }

  private static boolean isMonth(YearMonth month, String part) {
    return DateText.isNumber(part)
        ? shortNumber(part) == month.getMonthValue()
        : DateWords.month(part).filter(named -> named == month.getMonthValue()).isPresent();
  }

  /** A number of one or two figures; 0 for anything else. */
  private static int shortNumber(String part) {
    return DateText.isNumber(part) && part.matches("\\d{1,2}") ? Integer.parseInt(part) : 0;
  }
}
