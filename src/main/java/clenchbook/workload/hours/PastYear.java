package clenchbook.workload.hours;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The twelve months that end with a day, or as much of them as the book holds: what rates a year
 * rest on.
 *
 * @param from first day, inclusive
 * @param to last day, inclusive
 * @param load the work in it
 * @param scale what turns it into a year: 1 when all twelve months were worked in, else 365 over
 *     the days that the book covers
 * @param weeks the work of each whole seven days, counted back from the last day, latest first
 * @param days its days with work, in order
 */
public record PastYear(
    LocalDate from,
    LocalDate to,
    Load load,
    double scale,
    List<Load> weeks,
    Collection<WorkDay> days) {

  private static final double DAYS_OF_A_YEAR = 365;

  /** Copies its lists. */
  public PastYear {
    weeks = List.copyOf(weeks);
    days = List.copyOf(days);
  }

  /**
   * The past year.
   *
   * @param all all days of the book
   * @param to its last day
   * @return a year without work when the book holds none
   */
  public static PastYear of(WorkDays all, LocalDate to) {
    LocalDate yearAgo = to.minusYears(1).plusDays(1);
    LocalDate first = all.first().orElse(yearAgo);
    boolean whole = !first.isAfter(yearAgo) || all.coverTwelveMonths(yearAgo);
    LocalDate from = whole ? yearAgo : first.isAfter(to) ? to : first;
    long covered = ChronoUnit.DAYS.between(from, to) + 1;
    List<Load> weeks = new ArrayList<>();
    for (long back = 0; (back + 1) * 7 <= covered; back++) {
      LocalDate last = to.minusDays(back * 7);
      weeks.add(all.load(last.minusDays(6), last));
    }
    return new PastYear(
        from,
        to,
        all.load(from, to),
        whole ? 1 : DAYS_OF_A_YEAR / covered,
        weeks,
        all.between(from, to));
  }

  /**
   * Whether the book covers all of it.
   *
   * @return false when rates a year were scaled up
   */
  public boolean whole() {
    return scale == 1;
  }

  /**
   * The days worked, by calendar week.
   *
   * @return at least one day each, in order
   */
  public List<Load> workedWeeks() {
    Map<Integer, Load> weeks = new TreeMap<>();
    for (WorkDay day : days) {
      if (day.worked()) {
        int week =
            day.date().get(IsoFields.WEEK_BASED_YEAR) * 100
                + day.date().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
        weeks.merge(week, day.load(), Load::plus);
      }
    }
    return List.copyOf(weeks.values());
  }
}
