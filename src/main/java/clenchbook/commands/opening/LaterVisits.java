package clenchbook.commands.opening;

import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Visits dated after the day of the run: the first few by their cells, the others by number. */
final class LaterVisits {
  private static final int NAMED = 5;

  private LaterVisits() {}

  /** The warnings, one line each; none where no visit is dated after the day. */
  static List<String> warnings(Jobs jobs, LocalDate today) {
    List<Job> later = jobs.all().stream().filter(job -> job.date().isAfter(today)).toList();
    List<String> lines = new ArrayList<>();
    later.stream()
        .limit(NAMED)
        .forEach(job -> lines.add(cellAndDay(job) + " is after today, " + today));
    if (later.size() > NAMED) {
      lines.add(others(later.size() - NAMED, later.get(later.size() - 1)));
    }
    return lines;
  }

  private static String others(int number, Job last) {
    return number == 1
        ? "1 more visit is after today: " + cellAndDay(last)
        : number + " more visits are after today, the last one " + cellAndDay(last);
  }

  private static String cellAndDay(Job job) {
    return job.visit().source().at("Date") + ": " + job.date();
  }
}
