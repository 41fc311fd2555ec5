package clenchbook.workload;

import clenchbook.book.Book;
import clenchbook.jobs.Job;
import clenchbook.workload.outlook.ShapeDifference;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The year's hours and strain against the farrier's own limits: the way into this package. */
public final class Workload {

  private Workload() {}

  /**
   * The findings of a year to date, or of a whole year when the day is its last.
   *
   * @param book the book
   * @param jobs all its jobs, cancelled ones included; last year's too, for comparison
   * @param yearStart first day of the year
   * @param asAt last day that counts, within the year; whatever is later counts nowhere
   * @param hotLessCold what the comparisons say of shape minutes per shoe; empty when nothing
   * @return figures, report, page and warnings
   * @throws IllegalArgumentException when the day lies outside the year
   */
  public static WorkloadFindings of(
      Book book,
      List<Job> jobs,
      LocalDate yearStart,
      LocalDate asAt,
      Optional<ShapeDifference> hotLessCold) {
    if (asAt.isBefore(yearStart) || !asAt.isBefore(yearStart.plusYears(1))) {
      throw new IllegalArgumentException(asAt + " is not in the year from " + yearStart);
    }
    WorkYear work = WorkYear.of(book, jobs, yearStart, asAt, hotLessCold);
    return new WorkloadFindings(
        WorkloadFigures.of(work), WorkloadReport.of(work), WorkloadPage.of(work), work.warnings());
  }
}
