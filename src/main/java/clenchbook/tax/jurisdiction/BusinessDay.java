package clenchbook.tax.jurisdiction;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** Due days that fall on a weekend move to Monday; public holidays are not known here. */
public final class BusinessDay {
  private BusinessDay() {}

  /** The day itself from Monday to Friday, else the Monday after it. */
  public static LocalDate next(LocalDate day) {
    LocalDate next = day;
    while (next.getDayOfWeek() == DayOfWeek.SATURDAY || next.getDayOfWeek() == DayOfWeek.SUNDAY) {
      next = next.plusDays(1);
    }
    return next;
  }
}
