package clenchbook.workload.hours;

import clenchbook.reports.blocks.FigureText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where the year to date passed the farrier's own limits, or will as projected. */
public final class LimitWarnings {

  private final WorkDays days;
  private final FigurePeriod year;
  private final YearProjection projection;
  private final FigureText text;

  /**
   * Looks at a year to date.
   *
   * @param days all days of the book up to the day that counts
   * @param year the year to date
   * @param projection where its hours will end
   * @param text how figures are written for people
   */
  public LimitWarnings(
      WorkDays days, FigurePeriod year, YearProjection projection, FigureText text) {
    this.days = days;
    this.year = year;
    this.projection = projection;
    this.text = text;
  }

  /** One plain sentence each, with the date: the year's hours first, then weeks, then days. */
  public List<String> of(OwnLimits limits) {
    List<String> warnings = new ArrayList<>();
    limits.yearlyHours().ifPresent(limit -> addYear(warnings, limit));
    limits.weeklyHours().ifPresent(limit -> addWeeks(warnings, limit));
    limits.horsesPerDay().ifPresent(limit -> addDays(warnings, limit));
    return warnings;
  }

  private void addYear(List<String> warnings, double limit) {
    projection
        .passes(limit)
        .ifPresent(
            date ->
                warnings.add(
                    date.isAfter(year.to())
                        ? projected(limit, date)
                        : text.say("workload.limit.year", text.plain(limit), text.day(date))));
  }

  private String projected(double limit, LocalDate date) {
    return text.say(
        "workload.limit.yearProjected",
        text.plain(limit),
        text.day(date),
        text.hours(projection.hours()),
        projection.basis().said());
  }

  private void addWeeks(List<String> warnings, double limit) {
    List<Over> over = new ArrayList<>();
    for (FigurePeriod week : year.weeks()) {
      over.add(new Over(text.weekOf(week.from()), days.hours(week.from(), week.to())));
    }
    Passed.of(over, limit)
        .map(
            passed ->
                passed.once()
                    ? text.say(
                        "workload.limit.week",
                        text.hours(limit),
                        passed.most().when(),
                        text.hours(passed.most().figure()))
                    : text.say(
                        "workload.limit.weeks",
                        text.hours(limit),
                        passed.times(),
                        passed.most().when(),
                        text.hours(passed.most().figure()),
                        passed.last().when()))
        .ifPresent(warnings::add);
  }

  private void addDays(List<String> warnings, double limit) {
    List<Over> over =
        days.between(year.from(), year.to()).stream()
            .map(day -> new Over(text.day(day.date()), day.load().horses()))
            .toList();
    int horses = (int) Math.ceil(limit);
    Passed.of(over, limit)
        .map(
            passed ->
                passed.once()
                    ? text.say(
                        "workload.limit.day",
                        text.plain(limit),
                        passed.most().when(),
                        text.plain(passed.most().figure()),
                        horses)
                    : text.say(
                        "workload.limit.days",
                        text.plain(limit),
                        passed.times(),
                        passed.most().when(),
                        text.plain(passed.most().figure()),
                        passed.last().when(),
                        horses))
        .ifPresent(warnings::add);
  }

  /** A week or day and what it asked. */
  private record Over(String when, double figure) {}

  /** How often a limit was passed, where furthest and where last. */
  private record Passed(int times, Over most, Over last) {
    private static Optional<Passed> of(List<Over> all, double limit) {
      List<Over> over = all.stream().filter(one -> OwnLimits.exceeds(one.figure(), limit)).toList();
      return over.stream()
          .max(Comparator.comparingDouble(Over::figure))
          .map(most -> new Passed(over.size(), most, over.get(over.size() - 1)));
    }

    private boolean once() {
      return times == 1;
    }
  }
}
