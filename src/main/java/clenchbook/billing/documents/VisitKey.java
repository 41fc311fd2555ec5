package clenchbook.billing.documents;

import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.time.LocalDate;

/**
 * What a row of Visits is known by, whatever its position in the sheet.
 *
 * @param date the day
 * @param horse the horse's name as looked up; empty for a fee without one
 * @param work the Work's name as looked up
 * @param occurrence which row of this date, horse and Work, from 1
 */
public record VisitKey(LocalDate date, String horse, String work, int occurrence) {
  /**
   * The key of a job.
   *
   * @param job the job
   * @return its key
   */
  public static VisitKey of(Job job) {
    return new VisitKey(
        job.date(),
        Names.key(job.visit().horse()),
        Names.key(job.visit().work()),
        job.occurrence());
  }
}
