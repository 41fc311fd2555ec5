package clenchbook.schedule.due;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One coming visit of a horse: its due date, or for a horse overdue the day after the list.
 *
 * @param horse the horse
 * @param usual what it usually has done
 * @param date the day to plan it for
 * @param overdue whether it should have been seen already
 */
public record ComingVisit(DueHorse horse, UsualVisit usual, LocalDate date, boolean overdue) {

  static final Comparator<ComingVisit> BY_DATE =
      Comparator.comparing(ComingVisit::date).thenComparing(ComingVisit::horse, DueHorse.BY_DATE);

  /** Gives every visit that comes due up to a day, a horse with a short interval more than once. */
  public static List<ComingVisit> upTo(DueDates due, LocalDate last) {
    List<ComingVisit> visits = new ArrayList<>();
    for (DueHorse horse : due.expected()) {
      UsualVisit usual = UsualVisit.of(horse);
      boolean overdue = !horse.due().isAfter(due.asAt());
      LocalDate date = overdue ? due.asAt().plusDays(1) : horse.due();
      while (!date.isAfter(last)) {
        visits.add(new ComingVisit(horse, usual, date, overdue));
        date = horse.interval().after(date);
        overdue = false;
      }
    }
    visits.sort(BY_DATE);
    return List.copyOf(visits);
  }

  /** Gives the Monday of a date's week. */
  public static LocalDate monday(LocalDate date) {
    return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }
}
