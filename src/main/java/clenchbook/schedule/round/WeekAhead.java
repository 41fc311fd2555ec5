package clenchbook.schedule.round;

import clenchbook.book.Names;
import clenchbook.book.Place;
import clenchbook.jobs.BookIndex;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one of the next weeks will ask.
 *
 * @param from its first day
 * @param to its last day
 * @param horses horse-visits due in it; what is overdue counts in the first week
 * @param places places to go to
 * @param jobHours hours of work, by each horse's usual visit, to a tenth, half-up
 * @param basis the weakest basis of those hours
 * @param driveHours hours of driving if each place were its own way out and back, to a tenth
 * @param daysNeeded days at the limit of horses a day; empty without a limit
 * @param overLimit days on which more horses come due than the limit, with their number
 */
public record WeekAhead(
    LocalDate from,
    LocalDate to,
    int horses,
    int places,
    BigDecimal jobHours,
    Basis basis,
    BigDecimal driveHours,
    Optional<Integer> daysNeeded,
    Map<LocalDate, Integer> overLimit) {

  private static final int WEEKS = 4;
  private static final int FEW_DAYS = 3;
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** Keeps the days in order. */
  public WeekAhead {
    overLimit = Collections.unmodifiableMap(new TreeMap<>(overLimit));
  }

  /** Gives all hours of the week. */
  public BigDecimal hours() {
    return jobHours.add(driveHours);
  }

  /**
   * Looks four weeks ahead from the day after the list. Weeks end on Sunday (ISO 8601); up to three
   * days left of the present week stand with the week after it, more are a week of their own.
   *
   * @param limit horses a day; empty for none
   */
  public static List<WeekAhead> of(DueDates due, BookIndex index, Optional<Integer> limit) {
    LocalDate first = due.asAt().plusDays(1);
    LocalDate sunday = ComingVisit.monday(first.plusDays(FEW_DAYS)).plusDays(6);
    List<ComingVisit> coming = ComingVisit.upTo(due, sunday.plusDays(7L * (WEEKS - 1)));
    List<WeekAhead> weeks = new ArrayList<>();
    for (int week = 0; week < WEEKS; week++) {
      LocalDate to = sunday.plusDays(7L * week);
      LocalDate from = week == 0 ? first : to.minusDays(6);
      List<ComingVisit> visits =
          coming.stream().filter(v -> !v.date().isBefore(from) && !v.date().isAfter(to)).toList();
      weeks.add(week(from, to, visits, index, limit));
    }
    return List.copyOf(weeks);
  }

  private static WeekAhead week(
      LocalDate from,
      LocalDate to,
      List<ComingVisit> visits,
      BookIndex index,
      Optional<Integer> limit) {
    BigDecimal minutes =
        visits.stream().map(v -> v.usual().workMinutes()).reduce(BigDecimal.ZERO, BigDecimal::add);
    Basis basis = visits.stream().map(v -> v.usual().basis()).reduce(Basis.MEASURED, Basis::weaker);
    List<String> places = visits.stream().map(v -> v.horse().place()).distinct().toList();
    BigDecimal drive =
        places.stream()
            .map(name -> index.place(name).flatMap(Place::driveMin).orElse(BigDecimal.ZERO))
            .reduce(BigDecimal.ZERO, BigDecimal::add)
            .multiply(TWO);
    return new WeekAhead(
        from,
        to,
        visits.size(),
        (int) places.stream().map(Names::key).distinct().count(),
        hours(minutes),
        basis,
        hours(drive),
        limit.map(most -> (visits.size() + most - 1) / most),
        limit.map(most -> over(visits, most)).orElse(Map.of()));
  }

  private static Map<LocalDate, Integer> over(List<ComingVisit> visits, int limit) {
    Map<LocalDate, Integer> byDay = new TreeMap<>();
    visits.stream()
        .filter(visit -> !visit.overdue())
        .forEach(visit -> byDay.merge(visit.date(), 1, Integer::sum));
    byDay.values().removeIf(horses -> horses <= limit);
    return byDay;
  }

  private static BigDecimal hours(BigDecimal minutes) {
    return minutes.divide(SIXTY, 1, RoundingMode.HALF_UP);
  }
}
