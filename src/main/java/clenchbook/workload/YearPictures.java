package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.YearProjection;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The year as pictures: a column per week by task, and the course of the hours. */
final class YearPictures {

  private final WorkYear work;

  YearPictures(WorkYear work) {
    this.work = work;
  }

  /** A column per week, its height the hours, its pattern the task. */
  Block weeks() {
    List<FigurePeriod> weeks = work.year().weeks();
    List<Chart.Series> series = new ArrayList<>();
    for (HoursMeasure measure : HoursMeasure.values()) {
      if (measure != HoursMeasure.IN_ALL && work.load().hours(measure) > 0) {
        series.add(
            new Chart.Series(
                measure.shortName(),
                weeks.stream().map(week -> work.load(week).hours(measure)).toList()));
      }
    }
    return new Block.Picture(
        "The year, week by week",
        weeksInWords(weeks),
        new Chart.Columns(
            "ISO week",
            "hours",
            labels(weeks),
            series,
            true,
            false,
            limit("weekly limit", work.limits().weeklyHours())));
  }

  private String weeksInWords(List<FigurePeriod> weeks) {
    return weeks.stream()
        .max(Comparator.comparingDouble(week -> work.load(week).hours()))
        .filter(week -> work.load(week).hours() > 0)
        .map(
            week ->
                "Hours a week by task; the hardest is "
                    + week.name()
                    + " with "
                    + Digits.fixed(work.load(week).hours(), 2)
                    + " hours.")
        .orElse("No hours in the year to date.");
  }

  /** Week numbers; the second week of one number in a year gets its year. */
  private static List<String> labels(List<FigurePeriod> weeks) {
    Set<String> labels = new LinkedHashSet<>();
    for (FigurePeriod week : weeks) {
      String number = week.name().substring(week.name().indexOf('W') + 1);
      if (!labels.add(number)) {
        labels.add(week.name());
      }
    }
    return List.copyOf(labels);
  }

  private static List<Chart.Limit> limit(String name, OptionalDouble value) {
    return value.isPresent() ? List.of(new Chart.Limit(name, value.getAsDouble())) : List.of();
  }

  /** The hours added up, against last year, the projection and the yearly limit. */
  Block course() {
    List<Chart.Line> lines = new ArrayList<>();
    LocalDate start = work.year().from();
    lines.add(new Chart.Line("this year", added(start, work.year().to()), false));
    if (work.lastYear() > 0) {
      lines.add(
          new Chart.Line(
              "last year", fromFirstWork(start.minusYears(1), start.minusDays(1)), true));
    }
    if (work.year().to().isBefore(work.projection().end())) {
      lines.add(new Chart.Line("projected", projected(), true));
    }
    return new Block.Picture(
        "The hours added up, against last year and your limit",
        (work.whole() ? "Hours in all" : "Hours in all to date and projected")
            + (work.lastYear() > 0 ? ", with last year's." : "."),
        new Chart.Lines(
            "weeks since the year began",
            "hours",
            lines,
            limit("yearly limit", work.limits().yearlyHours()),
            List.of()));
  }

  /** Last year's course without the flat part before the book begins. */
  private List<Chart.Point> fromFirstWork(LocalDate from, LocalDate to) {
    List<Chart.Point> points = added(from, to);
    int first = 0;
    while (first + 1 < points.size() && points.get(first + 1).y() == 0) {
      first++;
    }
    return points.subList(first, points.size());
  }

  private List<Chart.Point> added(LocalDate from, LocalDate to) {
    List<Chart.Point> points = new ArrayList<>();
    points.add(new Chart.Point(0, 0));
    double sum = 0;
    for (LocalDate day = from; day.isBefore(to); day = day.plusDays(7)) {
      LocalDate last = day.plusDays(6).isBefore(to) ? day.plusDays(6) : to;
      sum += work.days().hours(day, last);
      points.add(new Chart.Point(week(from, last), sum));
    }
    return points;
  }

  private List<Chart.Point> projected() {
    YearProjection projection = work.projection();
    LocalDate start = work.year().from();
    List<Chart.Point> points = new ArrayList<>();
    points.add(new Chart.Point(week(start, work.year().to()), projection.toDate()));
    LocalDate day = work.year().to().plusDays(7);
    for (; day.isBefore(projection.end()); day = day.plusDays(7)) {
      points.add(new Chart.Point(week(start, day), projection.by(day)));
    }
    points.add(new Chart.Point(week(start, projection.end()), projection.hours()));
    return points;
  }

  private static double week(LocalDate from, LocalDate day) {
    return (ChronoUnit.DAYS.between(from, day) + 1) / 7.0;
  }
}
