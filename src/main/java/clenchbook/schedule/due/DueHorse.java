package clenchbook.schedule.due;

import clenchbook.book.Names;
import clenchbook.jobs.HorseId;
import clenchbook.jobs.Job;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/**
 * A horse with its next date.
 *
 * @param id which horse
 * @param owner who owns it on the day of the list; sharers separated by semicolons
 * @param place where it stands; may be empty
 * @param horseNotes the notes of its row in Horses
 * @param visits its visits that were no lost-shoe call and no fee, each visit's rows together, in
 *     date order; at least one
 * @param lastSeen the last day it was seen at all, lost-shoe calls included
 * @param interval days between its visits
 * @param asAt the day of the list
 */
public record DueHorse(
    HorseId id,
    String owner,
    String place,
    String horseNotes,
    List<List<Job>> visits,
    LocalDate lastSeen,
    VisitInterval interval,
    LocalDate asAt) {

  /** Overdue first, longest first; then by due date, place and name. */
  public static final Comparator<DueHorse> BY_DATE =
      Comparator.comparing(DueHorse::due)
          .thenComparing(DueHorse::place, Names.ORDER)
          .thenComparing(DueHorse::id);

  /** Copies the visits. */
  public DueHorse {
    visits = visits.stream().map(List::copyOf).toList();
  }

  /** Gives the rows of the last visit, in row order. */
  public List<Job> lastVisit() {
    return visits.get(visits.size() - 1);
  }

  /** Gives the day of the last visit. */
  public LocalDate last() {
    return lastVisit().get(0).date();
  }

  /** Gives the day the next visit is due. */
  public LocalDate due() {
    return interval.after(last());
  }

  /** Gives how many days it is overdue on the day of the list; zero where it is not. */
  public long daysOverdue() {
    return Math.max(0, ChronoUnit.DAYS.between(due(), asAt));
  }

  /** Says whether it has not been seen, for whatever reason, for two of its intervals. */
  public boolean goneQuiet() {
    return ChronoUnit.DAYS.between(lastSeen, asAt) >= 2L * interval.days();
  }

  /** Gives the word for its state: {@code gone quiet}, {@code overdue} or {@code due}. */
  public String state() {
    if (goneQuiet()) {
      return "gone quiet";
    }
    return daysOverdue() > 0 ? "overdue" : "due";
  }
}
