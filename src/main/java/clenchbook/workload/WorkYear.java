package clenchbook.workload;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.Task;
import clenchbook.jobs.Job;
import clenchbook.reports.blocks.FigureText;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.JobDays;
import clenchbook.workload.hours.LimitWarnings;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.OwnLimits;
import clenchbook.workload.hours.PastYear;
import clenchbook.workload.hours.WorkDay;
import clenchbook.workload.hours.WorkDays;
import clenchbook.workload.hours.YearProjection;
import clenchbook.workload.outlook.ChangedWeek;
import clenchbook.workload.outlook.MixedWork;
import clenchbook.workload.outlook.ShapeDifference;
import clenchbook.workload.outlook.StopAge;
import clenchbook.workload.scores.ExposureRules;
import clenchbook.workload.scores.YearScores;
import clenchbook.workload.strain.Ratings;
import clenchbook.workload.strain.TaskRating;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Everything that the pages and figures say of a year, computed once.
 *
 * @param text how figures are written for people
 * @param business the business name; may be empty
 * @param days all days of the book up to the day that counts
 * @param year the year to date
 * @param load its work
 * @param projection where its hours will end
 * @param limits the farrier's own
 * @param ratings the farrier's own
 * @param rules how the book's country judges vibration and noise
 * @param scores what the methods say
 * @param past the twelve months that end with the day
 * @param stop what is still to come; empty unless Birth year and Stop age are set
 * @param changes what a changed week would have made of the past year
 * @param mixed the past year under another mix
 * @param hotLessCold the comparison of hot with cold; empty when it shows nothing yet
 * @param unsaid shoes nailed on in the year without a word on how they were shaped
 */
record WorkYear(
    FigureText text,
    String business,
    WorkDays days,
    FigurePeriod year,
    Load load,
    YearProjection projection,
    OwnLimits limits,
    Ratings ratings,
    ExposureRules rules,
    YearScores scores,
    PastYear past,
    Optional<StopAge> stop,
    List<ChangedWeek.Change> changes,
    MixedWork mixed,
    Optional<ShapeDifference> hotLessCold,
    int unsaid) {

  /** Copies its lists. */
  WorkYear {
    changes = List.copyOf(changes);
  }

  static WorkYear of(
      Book book,
      List<Job> jobs,
      LocalDate start,
      LocalDate asAt,
      Optional<ShapeDifference> hotLessCold) {
    WorkDays days = JobDays.of(book, jobs).upTo(asAt);
    FigurePeriod year = FigurePeriod.year(start, asAt);
    OwnLimits limits = OwnLimits.of(book.settings());
    Ratings ratings = new Ratings(book.strain());
    ExposureRules rules = ExposureRules.forCountry(book.settings().text(Setting.COUNTRY));
    PastYear past = PastYear.of(days, asAt);
    double setUp = book.settings().number(Setting.FORGE_SETUP_MIN).doubleValue();
    return new WorkYear(
        FigureText.of(book.settings()),
        book.settings().text(Setting.BUSINESS_NAME),
        days,
        year,
        days.load(start, asAt),
        new YearProjection(days, start, asAt),
        limits,
        ratings,
        rules,
        new YearScores(days.between(start, asAt), ratings, rules),
        past,
        stop(limits.lastYear(), past, ratings, setUp, hotLessCold),
        new ChangedWeek(past, ratings, setUp, hotLessCold).changes(limits.horsesPerDay()),
        new MixedWork(past.load(), setUp, hotLessCold),
        hotLessCold,
        unsaid(jobs, year));
  }

  private static Optional<StopAge> stop(
      OptionalInt lastYear,
      PastYear past,
      Ratings ratings,
      double setUp,
      Optional<ShapeDifference> hotLessCold) {
    return lastYear.isPresent()
        ? Optional.of(new StopAge(past, lastYear.getAsInt(), ratings, setUp, hotLessCold))
        : Optional.empty();
  }

  private static int unsaid(List<Job> jobs, FigurePeriod year) {
    return jobs.stream()
        .filter(job -> !job.cancelled() && job.shaping().isEmpty())
        .filter(job -> !job.date().isBefore(year.from()) && !job.date().isAfter(year.to()))
        .mapToInt(Job::shoes)
        .sum();
  }

  /** The days of the year to date with any work, in order. */
  Collection<WorkDay> worked() {
    return days.between(year.from(), year.to());
  }

  /** Whether the day that counts is the year's last. */
  boolean whole() {
    return !year.to().isBefore(projection.end());
  }

  /** The work of a part of the year. */
  Load load(FigurePeriod period) {
    return days.load(period.from(), period.to());
  }

  /** The farrier's own warnings. */
  List<String> warnings() {
    return new LimitWarnings(days, year, projection, text).of(limits);
  }

  /** Last year's hours up to the same day. */
  double lastYearToDate() {
    return days.hours(year.from().minusYears(1), year.to().minusYears(1));
  }

  /** The first day of a book that does not hold all of last year; empty when it does. */
  Optional<LocalDate> bookBegins() {
    LocalDate lastYear = year.from().minusYears(1);
    return days.first()
        .filter(first -> first.isAfter(lastYear) && !days.coverTwelveMonths(lastYear));
  }

  /** Last year's hours. */
  double lastYear() {
    return days.hours(year.from().minusYears(1), year.from().minusDays(1));
  }

  /** Tasks whose longest hold can be set against the standard, or the reason why not. */
  List<TaskRating> holds() {
    return ratings.where(
        rating ->
            rating.task() != Task.DRIVE
                && rating.longestHoldSeconds().isPresent()
                && rating.trunkDegrees().isPresent());
  }
}
