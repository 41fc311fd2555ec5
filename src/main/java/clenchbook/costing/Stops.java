package clenchbook.costing;

import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Groups jobs into days and stops. */
public final class Stops {
  private Stops() {}

  /**
   * Groups jobs by day and place.
   *
   * @param jobs jobs by date, sheet and row; cancelled ones are left out
   * @return the stops of each day, in the order of their first rows
   */
  public static Map<LocalDate, List<Stop>> byDay(List<Job> jobs) {
    Map<LocalDate, Map<String, List<Job>>> days = new TreeMap<>();
    for (Job job : jobs) {
      if (!job.cancelled()) {
        days.computeIfAbsent(job.date(), unused -> new LinkedHashMap<>())
            .computeIfAbsent(Names.key(job.place()), unused -> new ArrayList<>())
            .add(job);
      }
    }
    Map<LocalDate, List<Stop>> stops = new TreeMap<>();
    days.forEach((day, places) -> stops.put(day, stops(day, places)));
    return stops;
  }

  private static List<Stop> stops(LocalDate day, Map<String, List<Job>> places) {
    return places.values().stream().map(jobs -> new Stop(day, jobs.get(0).place(), jobs)).toList();
  }
}
