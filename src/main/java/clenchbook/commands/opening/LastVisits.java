package clenchbook.commands.opening;

import clenchbook.jobs.Job;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** The months in which a book has visits, for a book that has none in the last full one. */
public final class LastVisits {
  private LastVisits() {}

  /** Whether a month has a visit that was not cancelled. */
  public static boolean any(OpenBook open, YearMonth month) {
    return open.jobs().all().stream()
        .anyMatch(job -> !job.cancelled() && YearMonth.from(job.date()).equals(month));
  }

  /**
   * The month of the last visit.
   *
   * @param today the day of the run; a later date may be a slip of the pen
   * @return empty where the book has no visit up to that day
   */
  public static Optional<YearMonth> month(OpenBook open, LocalDate today) {
    return open.jobs().all().stream()
        .filter(job -> !job.cancelled() && !job.date().isAfter(today))
        .map(Job::date)
        .max(LocalDate::compareTo)
        .map(YearMonth::from);
  }

  /**
   * The month to run where none is named: nothing to add where the last full one has visits.
   *
   * @return the option {@code --month} with its value, or no words
   */
  public static String[] option(OpenBook open, LocalDate today) {
    YearMonth usual = YearMonth.from(today).minusMonths(1);
    return any(open, usual)
        ? new String[0]
        : month(open, today)
            .map(month -> new String[] {"--month", month.toString()})
            .orElse(new String[0]);
  }
}
