package clenchbook.costing;

import clenchbook.jobs.Job;
import java.time.LocalDate;
import java.util.List;

/**
 * One date and place with its jobs; that day's placeless jobs are one stop.
 *
 * @param date the day
 * @param place the place; empty for the placeless stop
 * @param jobs its uncancelled jobs, fees included, in row order
 */
public record Stop(LocalDate date, String place, List<Job> jobs) {
  /** Copies its list. */
  public Stop {
    jobs = List.copyOf(jobs);
  }
}
