package clenchbook.workload.hours;

import clenchbook.reports.blocks.FigureText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

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
                        : "Hours in all passed your yearly limit of "
                            + text.plain(limit)
                            + " on "
                            + text.day(date)
                            + "."));
  }

  private String projected(double limit, LocalDate date) {
    return "At this rate hours in all pass your yearly limit of "
        + text.plain(limit)
        + " about "
        + text.day(date)
        + " and reach "
        + text.hours(projection.hours())
        + " by the year's end ("
        + projection.basis()
        + ").";
  }

  private void addWeeks(List<String> warnings, double limit) {
    List<Over> over = new ArrayList<>();
    for (FigurePeriod week : year.weeks()) {
      over.add(new Over(text.weekOf(week.from()), days.hours(week.from(), week.to())));
    }
    sentence(
            over,
            limit,
            text::hours,
            "Your weekly limit of %1$s was passed in the week of %3$s (%4$s).",
            "Your weekly limit of %1$s was passed in %2$s weeks, furthest in the week of %3$s"
                + " (%4$s), last in the week of %5$s.")
        .ifPresent(warnings::add);
  }

  private void addDays(List<String> warnings, double limit) {
    List<Over> over =
        days.between(year.from(), year.to()).stream()
            .map(day -> new Over(text.day(day.date()), day.load().horses()))
            .toList();
    sentence(
            over,
            limit,
            text::plain,
            "Your daily limit of %1$s horses was passed on %3$s (%4$s).",
            "Your daily limit of %1$s horses was passed on %2$s days, furthest on %3$s (%4$s), last"
                + " on %5$s.")
        .ifPresent(warnings::add);
  }

  private record Over(String when, double figure) {}

  private Optional<String> sentence(
      List<Over> all, double limit, DoubleFunction<String> figure, String once, String often) {
    List<Over> over = all.stream().filter(one -> OwnLimits.exceeds(one.figure(), limit)).toList();
    if (over.isEmpty()) {
      return Optional.empty();
    }
    Over most = over.stream().max(Comparator.comparingDouble(Over::figure)).orElseThrow();
    Over last = over.get(over.size() - 1);
    return Optional.of(
        (over.size() == 1 ? once : often)
            .formatted(
                figure.apply(limit),
                text.count(over.size()),
                most.when(),
                figure.apply(most.figure()),
                last.when()));
  }

  /** A count with its noun. */
  public static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
