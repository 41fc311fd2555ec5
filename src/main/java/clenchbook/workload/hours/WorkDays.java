package clenchbook.workload.hours;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** All days of the book on which anything was done, by date. */
public final class WorkDays {

  private final NavigableMap<LocalDate, WorkDay> days;

  private final NavigableMap<LocalDate, Double> hours = new TreeMap<>();

  private WorkDays(NavigableMap<LocalDate, WorkDay> days) {
    this.days = Collections.unmodifiableNavigableMap(days);
    days.forEach((date, day) -> hours.put(date, day.load().hours()));
  }

  /**
   * Days by date.
   *
   * @param loads what was done, in any order; loads of one date are added
   * @return the days
   */
  public static WorkDays of(Collection<WorkDay> loads) {
    NavigableMap<LocalDate, WorkDay> days = new TreeMap<>();
    for (WorkDay day : loads) {
      days.merge(
          day.date(), day, (one, other) -> new WorkDay(one.date(), one.load().plus(other.load())));
    }
    return new WorkDays(days);
  }

  /**
   * The days of a period.
   *
   * @param from first day, inclusive
   * @param to last day, inclusive
   * @return in order; those without any work are left out
   */
  public Collection<WorkDay> between(LocalDate from, LocalDate to) {
    return from.isAfter(to) ? Collections.emptyList() : days.subMap(from, true, to, true).values();
  }

  /**
   * The work of a period.
   *
   * @param from first day, inclusive
   * @param to last day, inclusive
   * @return the sum
   */
  public Load load(LocalDate from, LocalDate to) {
    Load sum = Load.NONE;
    for (WorkDay day : between(from, to)) {
      sum = sum.plus(day.load());
    }
    return sum;
  }

  /**
   * All hours of a period.
   *
   * @param from first day, inclusive
   * @param to last day, inclusive
   * @return hours, not rounded
   */
  public double hours(LocalDate from, LocalDate to) {
    if (from.isAfter(to)) {
      return 0;
    }
    double sum = 0;
    for (double day : hours.subMap(from, true, to, true).values()) {
      sum += day;
    }
    return sum;
  }

  /**
   * The first day of the book with any work.
   *
   * @return empty for a book without
   */
  public Optional<LocalDate> first() {
    return days.isEmpty() ? Optional.empty() : Optional.of(days.firstKey());
  }

  /**
   * The longest run of days worked one after another.
   *
   * @param from first day, inclusive
   * @param to last day, inclusive
   * @return the earliest of the longest runs; empty when no day was worked
   */
  public Optional<Run> longestRun(LocalDate from, LocalDate to) {
    Optional<Run> longest = Optional.empty();
    Optional<Run> current = Optional.empty();
    for (WorkDay day : between(from, to)) {
      if (day.worked()) {
        Run run =
            current
                .filter(before -> before.last().plusDays(1).equals(day.date()))
                .map(before -> new Run(before.first(), day.date()))
                .orElse(new Run(day.date(), day.date()));
        current = Optional.of(run);
        longest = longest.filter(best -> best.days() >= run.days()).or(() -> Optional.of(run));
      }
    }
    return longest;
  }

  /**
   * Whether every month of a year holds a day worked.
   *
   * @param start first day of the year
   * @return true when all twelve do
   */
  public boolean coverTwelveMonths(LocalDate start) {
    Set<Month> months = EnumSet.noneOf(Month.class);
    for (WorkDay day : between(start, start.plusYears(1).minusDays(1))) {
      if (day.worked()) {
        months.add(YearMonth.from(day.date()).getMonth());
      }
    }
    return months.size() == Month.values().length;
  }

  /**
   * Days in a row without rest.
   *
   * @param first first day
   * @param last last day
   */
  public record Run(LocalDate first, LocalDate last) {
    /**
     * How many.
     *
     * @return at least 1
     */
    public int days() {
      return (int) (last.toEpochDay() - first.toEpochDay()) + 1;
    }
  }

  /** The same without what comes after a day. */
  public WorkDays upTo(LocalDate last) {
    return new WorkDays(new TreeMap<>(days.headMap(last, true)));
  }
}
