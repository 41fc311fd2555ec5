package clenchbook.tax.year;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTable;
import clenchbook.tax.rates.RateTables;
import java.time.LocalDate;
import java.util.Optional;

/**
 * On which day a year begins: the one rule for a tax year, the workload of a year to date and
 * whatever else counts by the farrier's year.
 *
 * @param days the table in which the regime's own first day stands under {@code starts}; a year it
 *     lacks starts on its nearest row's day, and without any row on 1 January
 * @param month the month of the Settings, from its first day; empty for the regime's own day. The
 *     month in which the regime's year begins is the regime's day: month 4 in the United Kingdom is
 *     the tax year from 6 April, which may be used for a year to 31 March.
 */
public record YearStart(RateTable days, Optional<Integer> month) {

  /**
   * The rule of a book.
   *
   * @param settings where a month may be named; one outside 1 to 12 counts as none
   */
  public static YearStart of(Regime regime, Settings settings, RateTables rates) {
    return new YearStart(
        rates.table(regime.table("year")),
        settings
            .findNumber(Setting.YEAR_STARTS)
            .map(Number::intValue)
            .filter(number -> number >= 1 && number <= 12));
  }

  /** The first day of the year that starts in {@code year}. */
  public LocalDate in(int year) {
    LocalDate regimes = regimes(year);
    return month
        .filter(number -> number != regimes.getMonthValue())
        .map(number -> LocalDate.of(year, number, 1))
        .orElse(regimes);
  }

  private LocalDate regimes(int year) {
    Optional<Rate> own =
        days.rows().stream()
            .filter(row -> row.code().equals("starts"))
            .reduce((earlier, later) -> later.covers(LocalDate.of(year, 12, 31)) ? later : earlier);
    return own.map(rate -> rate.dayIn(year)).orElse(LocalDate.of(year, 1, 1));
  }

  /** The first day of the year in which {@code day} lies. */
  public LocalDate holding(LocalDate day) {
    LocalDate start = in(day.getYear());
    return day.isBefore(start) ? in(day.getYear() - 1) : start;
  }
}
