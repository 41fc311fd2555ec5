package clenchbook.tax.year;

import clenchbook.values.Period;
import java.time.LocalDate;
import java.util.Locale;

/**
 * One tax year of a regime.
 *
 * @param regime the regime
 * @param year the calendar year in which it starts
 * @param days its first and last day
 * @param calendarQuarters whether its quarters begin on the first of a month although the year
 *     begins within one
 */
public record TaxYear(Regime regime, int year, Period days, boolean calendarQuarters) {

  /**
   * The tax year that starts in {@code year}.
   *
   * @param starts on which day it does
   */
  public static TaxYear of(Regime regime, int year, YearStart starts) {
    LocalDate first = starts.in(year);
    return new TaxYear(regime, year, new Period(first, first.plusYears(1).minusDays(1)), false);
  }

  /** The tax year in which a day lies, by the calendar year in which it starts. */
  public int yearOf(LocalDate day) {
    LocalDate start = first().withYear(day.getYear());
    return day.isBefore(start) ? day.getYear() - 1 : day.getYear();
  }

  /** The first day. */
  public LocalDate first() {
    return days.first();
  }

  /** The last day. */
  public LocalDate last() {
    return days.last();
  }

  /** The same year with quarters that begin on the first of a month. */
  public TaxYear withCalendarQuarters() {
    return new TaxYear(regime, year, days, true);
  }

  /**
   * The quarter 1 to 4 of this year: three months from its first day on, or from the first of that
   * day's month.
   */
  public Period quarter(int number) {
    if (number < 1 || number > 4) {
      throw new IllegalArgumentException("quarter " + number);
    }
    LocalDate first = calendarQuarters ? first().withDayOfMonth(1) : first();
    LocalDate start = first.plusMonths(3L * (number - 1));
    return new Period(start, first.plusMonths(3L * number).minusDays(1));
  }

  /** From the first day of the first quarter to the end of quarter {@code number}. */
  public Period toEndOfQuarter(int number) {
    return new Period(quarter(1).first(), quarter(number).last());
  }

  /** {@code 2026}, or {@code 2025-26} for a year that spans two. */
  public String label() {
    return first().getYear() == last().getYear()
        ? String.valueOf(year)
        : year + "-" + String.format(Locale.ROOT, "%02d", last().getYear() % 100);
  }
}
