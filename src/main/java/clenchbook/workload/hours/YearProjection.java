package clenchbook.workload.hours;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Where the year's hours will end, if the rest of it goes like the part so far.
 *
 * <p>The hours to date over the share of last year's hours that fell up to the same day, where last
 * year's book holds work in all twelve months and at least a tenth of it fell by then; otherwise
 * pro rata by days.
 */
public final class YearProjection {

  private static final double LEAST_SHARE = 0.1;

  private final WorkDays days;
  private final LocalDate start;
  private final LocalDate asAt;
  private final boolean seasonal;

  /**
   * A projection.
   *
   * @param days all days of the book
   * @param start first day of the year
   * @param asAt the day up to which work counts, within the year
   */
  public YearProjection(WorkDays days, LocalDate start, LocalDate asAt) {
    this.days = days;
    this.start = start;
    this.asAt = asAt;
    this.seasonal =
        days.coverTwelveMonths(start.minusYears(1)) && lastYearTo(asAt) >= LEAST_SHARE * lastYear();
  }

  /**
   * The year's hours in all, projected.
   *
   * @return hours, not rounded; the hours to date on the year's last day
   */
  public double hours() {
    if (!asAt.isBefore(end())) {
      return toDate();
    }
    return seasonal ? toDate() * lastYear() / lastYearTo(asAt) : toDate() / passed(asAt);
  }

  /**
   * Hours in all so far.
   *
   * @return hours, not rounded
   */
  public double toDate() {
    return days.hours(start, asAt);
  }

  /**
   * How the projection was made, in words.
   *
   * @return a few words
   */
  public Phrase basis() {
    if (!asAt.isBefore(end())) {
      return Phrase.of("the whole year", "workload.projection.wholeYear");
    }
    return seasonal
        ? Phrase.of(
            "hours to date over the same share of last year", "workload.projection.seasonal")
        : Phrase.of("hours to date pro rata by days", "workload.projection.byDays");
  }

  /**
   * The hours by a later day of the year, on the projected course.
   *
   * @param day after the day up to which work counts, within the year
   * @return hours, not rounded
   */
  public double by(LocalDate day) {
    return hours() * (seasonal ? lastYearTo(day) / lastYear() : passed(day));
  }

  /**
   * When the hours pass a limit.
   *
   * @param limit hours a year
   * @return the first day on which they are above it, so far or as projected; empty when never
   */
  public Optional<LocalDate> passes(double limit) {
    double sum = 0;
    for (WorkDay day : days.between(start, asAt)) {
      sum += day.load().hours();
      if (OwnLimits.exceeds(sum, limit)) {
        return Optional.of(day.date());
      }
    }
    for (LocalDate day = asAt.plusDays(1); !day.isAfter(end()); day = day.plusDays(1)) {
      if (OwnLimits.exceeds(by(day), limit)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  /**
   * The year's last day.
   *
   * @return inclusive
   */
  public LocalDate end() {
    return start.plusYears(1).minusDays(1);
  }

  private double lastYear() {
    return days.hours(start.minusYears(1), start.minusDays(1));
  }

  /** Last year's hours up to the same day of the year; the last day stands for its whole. */
  private double lastYearTo(LocalDate day) {
    LocalDate same = day.equals(end()) ? start.minusDays(1) : day.minusYears(1);
    return days.hours(start.minusYears(1), same);
  }

  private double passed(LocalDate day) {
    double elapsed = ChronoUnit.DAYS.between(start, day) + 1;
    return elapsed / (ChronoUnit.DAYS.between(start, end()) + 1);
  }
}
