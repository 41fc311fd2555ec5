package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One instalment of estimated tax.
 *
 * @param number 1 to 4
 * @param periodEnds the last day of the income it is for
 * @param due the day it is due, moved off weekends and legal holidays to the next working day
 */
record Instalment(int number, LocalDate periodEnds, LocalDate due) {

  /**
   * The four instalments of a calendar year; fewer where the table lacks it, which is remembered.
   */
  static List<Instalment> of(int year, RateLookup rates) {
    LocalDate day = LocalDate.of(year, 1, 1);
    List<Instalment> found = new ArrayList<>();
    for (int number = 1; number <= 4; number++) {
      int instalment = number;
      Optional<Rate> nominal = rates.find("us/estimated-tax", "instalment " + number, day);
      Optional<Rate> ends = rates.find("us/estimated-tax", "period " + number + " ends", day);
      nominal.ifPresent(
          due ->
              ends.ifPresent(
                  end ->
                      found.add(
                          new Instalment(
                              instalment, end.dayIn(year), workingDay(due.dayIn(year), rates)))));
    }
    return List.copyOf(found);
  }

  private static LocalDate workingDay(LocalDate nominal, RateLookup rates) {
    Set<LocalDate> holidays = new HashSet<>();
    for (String holiday : List.of("martin luther king day", "emancipation day")) {
      rates
          .find("us/holidays", holiday, nominal)
          .ifPresent(rate -> holidays.add(rate.dayIn(nominal.getYear())));
    }
    LocalDate day = nominal;
    while (isWeekend(day) || holidays.contains(day)) {
      day = day.plusDays(1);
    }
    return day;
  }

  private static boolean isWeekend(LocalDate day) {
    return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
  }
}
