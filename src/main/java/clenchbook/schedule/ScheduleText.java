package clenchbook.schedule;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and months as they stand on pages, the same on every machine. */
final class ScheduleText {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

  private ScheduleText() {}

  static String day(LocalDate day) {
    return DAY.format(day);
  }

  static String date(LocalDate day) {
    return DATE.format(day);
  }

  static String month(YearMonth month) {
    return MONTH.format(month);
  }

  static String horses(int count) {
    return count == 1 ? "1 horse" : count + " horses";
  }

  static String placeOrNone(String place) {
    return place.isEmpty() ? "(no place)" : place;
  }
}
