package clenchbook.workload.hours;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A stretch of days with the name it has in the figures.
 *
 * @param name {@code 2026}, {@code 2026-10}, {@code 2026-W41} or a day
 * @param from first day, inclusive
 * @param to last day, inclusive
 */
public record FigurePeriod(String name, LocalDate from, LocalDate to) {

  /**
   * The year to date, named by the year in which it starts.
   *
   * @param start first day of the year
   * @param asAt last day that counts
   * @return the period
   */
  public static FigurePeriod year(LocalDate start, LocalDate asAt) {
    return new FigurePeriod(String.format(Locale.ROOT, "%04d", start.getYear()), start, asAt);
  }

  /**
   * One day.
   *
   * @param day the day
   * @return the period
   */
  public static FigurePeriod day(LocalDate day) {
    return new FigurePeriod(day.toString(), day, day);
  }

  /**
   * The month of a day, not cut.
   *
   * @param day any day of it
   * @return the period
   */
  public static FigurePeriod month(LocalDate day) {
    YearMonth month = YearMonth.from(day);
    return new FigurePeriod(month.toString(), month.atDay(1), month.atEndOfMonth());
  }

  /**
   * The ISO week of a day, Monday to Sunday, not cut.
   *
   * @param day any day of it
   * @return the period
   */
  public static FigurePeriod week(LocalDate day) {
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    String name =
        String.format(
            Locale.ROOT,
            "%04d-W%02d",
            day.get(IsoFields.WEEK_BASED_YEAR),
            day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    return new FigurePeriod(name, monday, monday.plusDays(6));
  }

  /**
   * The calendar months that this one touches; the first is whole even where it began before, the
   * last ends with this one.
   *
   * @return in order
   */
  public List<FigurePeriod> months() {
    List<FigurePeriod> months = new ArrayList<>();
    for (LocalDate day = from; !day.isAfter(to); day = month(day).to().plusDays(1)) {
      months.add(month(day).upTo(to));
    }
    return months;
  }

  /**
   * The weeks that this one touches; the first is whole even where it began before, because a week
   * has seven days; the last ends with this one.
   *
   * @return in order
   */
  public List<FigurePeriod> weeks() {
    List<FigurePeriod> weeks = new ArrayList<>();
    for (LocalDate day = from; !day.isAfter(to); day = week(day).to().plusDays(1)) {
      weeks.add(week(day).upTo(to));
    }
    return weeks;
  }

  /**
   * How many days.
   *
   * @return at least 1
   */
  public int days() {
    return (int) ChronoUnit.DAYS.between(from, to) + 1;
  }

  private FigurePeriod upTo(LocalDate last) {
    return to.isAfter(last) ? new FigurePeriod(name, from, last) : this;
  }
}
