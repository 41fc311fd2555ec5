package clenchbook.reports.month;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;

/** A month in words. */
public final class MonthWords {
  private MonthWords() {}

  /**
   * A month in English words.
   *
   * @param month the month
   * @return such as {@code October 2026}
   */
  public static String of(YearMonth month) {
    return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
  }
}
