package clenchbook.workload.hours;

import clenchbook.book.Book;
import clenchbook.book.Names;
import clenchbook.book.Place;
import clenchbook.book.Trip;
import clenchbook.jobs.Job;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Minutes driven on business, by day.
 *
 * <p>A day with business trips has their minutes, also without a visit. A day of visits without
 * trips has twice the Drive min of each place, which overstates rounds.
 */
public final class Driving {

  private final Map<String, Place> places = new HashMap<>();
  private final Map<LocalDate, Double> trips = new TreeMap<>();

  private Driving(Book book) {
    book.places().forEach(place -> places.putIfAbsent(Names.key(place.name()), place));
    for (Trip trip : book.trips()) {
      if (trip.business()) {
        double minutes = trip.driveMin().map(BigDecimal::doubleValue).orElse(0.0);
        trips.merge(trip.date(), minutes, Double::sum);
      }
    }
  }

  /** One load of driving per day; jobs must not hold cancelled ones. */
  static List<WorkDay> of(Book book, List<Job> jobs) {
    Driving driving = new Driving(book);
    List<WorkDay> days = new ArrayList<>();
    driving.trips.forEach((date, minutes) -> days.add(day(date, minutes, Basis.MEASURED)));
    placesByDay(jobs)
        .forEach(
            (date, names) -> {
              if (!driving.trips.containsKey(date)) {
                days.add(day(date, driving.outAndBack(names), Basis.STANDARD));
              }
            });
    return days;
  }

  private static Map<LocalDate, Set<String>> placesByDay(List<Job> jobs) {
    Map<LocalDate, Set<String>> byDay = new TreeMap<>();
    for (Job job : jobs) {
      byDay.computeIfAbsent(job.date(), unused -> new TreeSet<>()).add(Names.key(job.place()));
    }
    return byDay;
  }

  private double outAndBack(Set<String> names) {
    double minutes = 0;
    for (String name : names) {
      Place place = places.get(name);
      if (place != null) {
        minutes += 2 * place.driveMin().map(BigDecimal::doubleValue).orElse(0.0);
      }
    }
    return minutes;
  }

  private static WorkDay day(LocalDate date, double minutes, Basis basis) {
    return new WorkDay(date, Load.of(Activity.DRIVE, Minutes.of(minutes, basis)));
  }
}
