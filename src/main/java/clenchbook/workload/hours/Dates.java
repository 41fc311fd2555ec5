package clenchbook.workload.hours;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days as the pages of this package print them; the figures keep the ISO form. */
public final class Dates {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);

  private Dates() {}

  /** Such as {@code 4 May 2026}. */
  public static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** Such as {@code Mon 4 May 2026}. */
  public static String weekday(LocalDate day) {
    return WEEKDAY.format(day);
  }

  /** Such as {@code May 2026}. */
  public static String month(LocalDate day) {
    return MONTH.format(day);
  }
}
