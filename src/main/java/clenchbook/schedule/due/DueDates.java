package clenchbook.schedule.due;

import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.book.Reason;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Horse;
import clenchbook.jobs.HorseId;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The next date of every horse, as at a day.
 *
 * <p>A horse is due one interval after its last visit that was no lost-shoe call. The interval is
 * the one Horses gives, else the median of the horse's own visits, else that of all horses, else
 * six weeks; each date says which. Cancelled rows and fees are no visits. A horse that is sold or
 * dead by the day of the list, or will be before it is due, never stands in it.
 *
 * @param asAt the day of the list
 * @param horses by due date, then place and name
 */
public record DueDates(LocalDate asAt, List<DueHorse> horses) {

  /** Copies the list. */
  public DueDates {
    horses = List.copyOf(horses);
  }

  /**
   * Makes the list.
   *
   * @param jobs the whole book; later visits than the day are left out
   * @param asAt the day of the list, usually a month's last
   */
  public static DueDates of(Jobs jobs, LocalDate asAt) {
    Map<HorseId, List<Job>> seen = seenUpTo(jobs, asAt);
    Map<HorseId, List<List<Job>>> visits = new TreeMap<>();
    seen.forEach((id, rows) -> visits.put(id, byDay(rows)));
    Optional<Integer> bookMedian =
        VisitInterval.median(visits.values().stream().flatMap(v -> gaps(v).stream()).toList());
    List<DueHorse> horses = new ArrayList<>();
    visits.forEach(
        (id, days) -> {
          if (!days.isEmpty()) {
            LocalDate lastSeen = lastDay(seen.getOrDefault(id, List.of()));
            dueHorse(jobs.index(), id, days, lastSeen, bookMedian, asAt).ifPresent(horses::add);
          }
        });
    horses.sort(DueHorse.BY_DATE);
    return new DueDates(asAt, horses);
  }

  /**
   * Gives the next date of a horse, for its invoice.
   *
   * @return empty for a horse that is sold, dead, gone quiet or only seen for a lost shoe
   */
  public Optional<LocalDate> next(HorseId horse) {
    return horses.stream()
        .filter(due -> due.id().equals(horse) && !due.goneQuiet())
        .map(DueHorse::due)
        .findFirst();
  }

  /** Gives the horses that are expected back and overdue, the longest first. */
  public List<DueHorse> overdue() {
    return expected().stream().filter(horse -> horse.daysOverdue() > 0).toList();
  }

  /** Gives the horses that are expected back, in order: all but those gone quiet. */
  public List<DueHorse> expected() {
    return horses.stream().filter(horse -> !horse.goneQuiet()).toList();
  }

  /** Gives the horses not seen for two of their intervals, in order. */
  public List<DueHorse> goneQuiet() {
    return horses.stream().filter(DueHorse::goneQuiet).toList();
  }

  private static Map<HorseId, List<Job>> seenUpTo(Jobs jobs, LocalDate asAt) {
    return jobs.all().stream()
        .filter(job -> !job.cancelled() && !job.fee() && !job.date().isAfter(asAt))
        .filter(job -> !job.horse().name().isEmpty())
        .sorted(Job.ORDER)
        .collect(Collectors.groupingBy(Job::horse, TreeMap::new, Collectors.toList()));
  }

  /** Puts the rows of each day together, lost-shoe calls left out. */
  private static List<List<Job>> byDay(List<Job> rows) {
    Map<LocalDate, List<Job>> days =
        rows.stream()
            .filter(job -> job.visit().reason() != Reason.LOST_SHOE)
            .collect(Collectors.groupingBy(Job::date, TreeMap::new, Collectors.toList()));
    return List.copyOf(days.values());
  }

  private static LocalDate lastDay(List<Job> rows) {
    return rows.get(rows.size() - 1).date();
  }

  private static List<Integer> gaps(List<List<Job>> visits) {
    List<Integer> gaps = new ArrayList<>();
    for (int i = 1; i < visits.size(); i++) {
      LocalDate before = visits.get(i - 1).get(0).date();
      gaps.add((int) ChronoUnit.DAYS.between(before, visits.get(i).get(0).date()));
    }
    return gaps;
  }

  private static Optional<DueHorse> dueHorse(
      BookIndex index,
      HorseId id,
      List<List<Job>> visits,
      LocalDate lastSeen,
      Optional<Integer> bookMedian,
      LocalDate asAt) {
    Optional<Horse> known = known(index, id);
    List<HorseRow> rows = known.map(horse -> rowsNow(horse, asAt)).orElse(List.of());
    Optional<BigDecimal> given =
        rows.stream().flatMap(row -> row.intervalWeeks().stream()).findFirst();
    VisitInterval interval = VisitInterval.of(given, gaps(visits), bookMedian);
    List<Job> last = visits.get(visits.size() - 1);
    DueHorse horse =
        new DueHorse(
            id,
            owner(index, id, rows),
            place(index, rows, last),
            rows.stream().map(HorseRow::notes).filter(n -> !n.isEmpty()).findFirst().orElse(""),
            visits,
            lastSeen,
            interval,
            asAt);
    boolean stays = known.map(k -> stays(k, asAt, horse.due())).orElse(true);
    return stays ? Optional.of(horse) : Optional.empty();
  }

  private static Optional<Horse> known(BookIndex index, HorseId id) {
    return index.horses().named(id.name()).stream()
        .filter(horse -> Names.same(index.ownerName(horse.id().owner()), id.owner()))
        .findFirst();
  }

  private static List<HorseRow> rowsNow(Horse horse, LocalDate asAt) {
    List<HorseRow> now = horse.on(asAt);
    return now.isEmpty() ? List.of(horse.rowAt(asAt)) : now;
  }

  /** Whether somebody still keeps the horse after the day of the list and on the day it is due. */
  private static boolean stays(Horse horse, LocalDate asAt, LocalDate due) {
    LocalDate until = due.isAfter(asAt) ? due : asAt.plusDays(1);
    return horse.rows().stream()
        .anyMatch(row -> row.until().map(end -> !end.isBefore(until)).orElse(true));
  }

  private static String owner(BookIndex index, HorseId id, List<HorseRow> rows) {
    TreeSet<String> owners = new TreeSet<>(Names.ORDER);
    rows.stream()
        .map(row -> index.ownerName(row.owner()))
        .filter(name -> !name.isEmpty())
        .forEach(owners::add);
    return owners.isEmpty() ? id.owner() : String.join("; ", owners);
  }

  private static String place(BookIndex index, List<HorseRow> rows, List<Job> last) {
    return rows.stream()
        .map(row -> index.placeName(row.place()))
        .filter(place -> !place.isEmpty())
        .findFirst()
        .orElse(last.get(0).place());
  }
}
