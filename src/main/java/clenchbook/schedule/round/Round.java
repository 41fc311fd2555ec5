package clenchbook.schedule.round;

import clenchbook.book.Names;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Horses of one place that come due within a week of each other and can be done in one go, with the
 * places that could be joined to it.
 *
 * <p>Neighbours are places that were visited on one day with this one at least twice in the last
 * twelve months and have a round that begins within seven days of this one: the farrier's own days
 * say what lies on one way. At most three, those that shared most days first.
 *
 * @param place the place; may be empty
 * @param from the first date, the day after the list for what is overdue
 * @param to the last date, at most six days later
 * @param horses the horses, by date
 * @param workMinutes minutes of work by their usual visits
 * @param neighbours names of neighbouring places, most shared days first
 */
public record Round(
    String place,
    LocalDate from,
    LocalDate to,
    List<DueHorse> horses,
    BigDecimal workMinutes,
    List<String> neighbours) {

  private static final int DAYS = 7;
  private static final int SHARED_DAYS = 2;
  private static final int HORIZON_DAYS = 56;
  private static final int MOST_NEIGHBOURS = 3;

  /** Copies the lists. */
  public Round {
    horses = List.copyOf(horses);
    neighbours = List.copyOf(neighbours);
  }

  /** Puts what comes due in the next eight weeks into rounds, by first date, then place. */
  public static List<Round> of(Jobs jobs, DueDates due) {
    List<Round> rounds = new ArrayList<>();
    ComingVisit.upTo(due, due.asAt().plusDays(HORIZON_DAYS)).stream()
        .collect(
            Collectors.groupingBy(
                visit -> Names.key(visit.horse().place()), TreeMap::new, Collectors.toList()))
        .values()
        .forEach(visits -> split(visits, rounds));
    Map<String, TreeSet<LocalDate>> days = daysByPlace(jobs, due.asAt());
    return rounds.stream()
        .map(round -> round.withNeighbours(rounds, days))
        .sorted(Comparator.comparing(Round::from).thenComparing(Round::place, Names.ORDER))
        .toList();
  }

  private static void split(List<ComingVisit> visits, List<Round> rounds) {
    int start = 0;
    for (int next = 1; next <= visits.size(); next++) {
      boolean over =
          next == visits.size()
              || !visits.get(next).date().isBefore(visits.get(start).date().plusDays(DAYS));
      if (over) {
        rounds.add(round(visits.subList(start, next)));
        start = next;
      }
    }
  }

  private static Round round(List<ComingVisit> visits) {
    return new Round(
        visits.get(0).horse().place(),
        visits.get(0).date(),
        visits.get(visits.size() - 1).date(),
        visits.stream().map(ComingVisit::horse).toList(),
        visits.stream()
            .map(visit -> visit.usual().workMinutes())
            .reduce(BigDecimal.ZERO, BigDecimal::add),
        List.of());
  }

  private static Map<String, TreeSet<LocalDate>> daysByPlace(Jobs jobs, LocalDate asAt) {
    return jobs.between(asAt.minusYears(1).plusDays(1), asAt).stream()
        .filter(job -> !job.cancelled() && !job.place().isEmpty())
        .collect(
            Collectors.groupingBy(
                job -> Names.key(job.place()),
                TreeMap::new,
                Collectors.mapping(Job::date, Collectors.toCollection(TreeSet::new))));
  }

  private Round withNeighbours(List<Round> rounds, Map<String, TreeSet<LocalDate>> days) {
    Map<String, Long> near = new TreeMap<>(Names.ORDER);
    for (Round other : rounds) {
      boolean soon = Math.abs(other.from.toEpochDay() - from.toEpochDay()) < DAYS;
      if (soon && !Names.same(other.place, place)) {
        near.put(other.place, shared(days, other.place));
      }
    }
    List<String> nearest =
        near.entrySet().stream()
            .filter(entry -> entry.getValue() >= SHARED_DAYS)
            .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
            .limit(MOST_NEIGHBOURS)
            .map(Map.Entry::getKey)
            .toList();
    return new Round(place, from, to, horses, workMinutes, nearest);
  }

  private long shared(Map<String, TreeSet<LocalDate>> days, String otherPlace) {
    TreeSet<LocalDate> own = days.getOrDefault(Names.key(place), new TreeSet<>());
    TreeSet<LocalDate> others = days.getOrDefault(Names.key(otherPlace), new TreeSet<>());
    return own.stream().filter(others::contains).count();
  }
}
