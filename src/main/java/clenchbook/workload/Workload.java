package clenchbook.workload;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
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
   * @param yearStart first day of the year, see {@link #yearStart}
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

  /**
   * The first day of the year in which a day lies.
   *
   * @param settings Year starts (month), first of that month; blank or the regime's own month: 6
   *     April for regime {@code uk}, else 1 January
   * @param day any day of the year
   * @return its first day
   */
  public static LocalDate yearStart(Settings settings, LocalDate day) {
    LocalDate start = startIn(settings, day.getYear());
    return day.isBefore(start) ? startIn(settings, day.getYear() - 1) : start;
  }

  /**
   * The first day of the year that starts in a calendar year.
   *
   * @param settings as for {@link #yearStart}
   * @param calendarYear the calendar year
   * @return its first day
   */
  public static LocalDate startIn(Settings settings, int calendarYear) {
    LocalDate regimes =
        settings.text(Setting.TAX_REGIME).equals("uk")
            ? LocalDate.of(calendarYear, 4, 6)
            : LocalDate.of(calendarYear, 1, 1);
    int month = settings.number(Setting.YEAR_STARTS).intValue();
    boolean own = month >= 1 && month <= 12 && month != regimes.getMonthValue();
    return own ? LocalDate.of(calendarYear, month, 1) : regimes;
  }
}
