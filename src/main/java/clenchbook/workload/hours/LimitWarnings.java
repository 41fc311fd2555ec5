package clenchbook.workload.hours;

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

  public LimitWarnings(WorkDays days, FigurePeriod year, YearProjection projection) {
    this.days = days;
    this.year = year;
    this.projection = projection;
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
                            + Digits.plain(limit)
                            + " on "
                            + Dates.day(date)
                            + "."));
  }

  private String projected(double limit, LocalDate date) {
    return "At this rate hours in all pass your yearly limit of "
        + Digits.plain(limit)
        + " about "
        + Dates.day(date)
        + " and reach "
        + Digits.fixed(projection.hours(), 2)
        + " by the year's end ("
        + projection.basis()
        + ").";
  }

  private void addWeeks(List<String> warnings, double limit) {
    List<Over> over = new ArrayList<>();
    for (FigurePeriod week : year.weeks()) {
      over.add(new Over(week.name(), days.hours(week.from(), week.to())));
    }
    sentence(over, limit, "week", "hours")
        .ifPresent(words -> warnings.add("Your weekly limit of " + words));
  }

  private void addDays(List<String> warnings, double limit) {
    List<Over> over =
        days.between(year.from(), year.to()).stream()
            .map(day -> new Over(Dates.day(day.date()), day.load().horses()))
            .toList();
    sentence(over, limit, "day", "horses")
        .ifPresent(words -> warnings.add("Your daily limit of " + words));
  }

  private record Over(String when, double figure) {}

  private static Optional<String> sentence(List<Over> all, double limit, String noun, String unit) {
    List<Over> over = all.stream().filter(one -> OwnLimits.exceeds(one.figure(), limit)).toList();
    if (over.isEmpty()) {
      return Optional.empty();
    }
    Over most = over.stream().max(Comparator.comparingDouble(Over::figure)).orElseThrow();
    Over last = over.get(over.size() - 1);
    return Optional.of(
        Digits.plain(limit)
            + " "
            + unit
            + (noun.equals("week") ? " was passed in " : " was passed on ")
            + counted(over.size(), noun)
            + ", furthest "
            + most.when()
            + " ("
            + Digits.plain(most.figure())
            + "), last "
            + last.when()
            + ".");
  }

  /** A count with its noun. */
  public static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
