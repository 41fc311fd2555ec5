package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.YearProjection;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The year as pictures: a column per week by task, and the course of the hours. */
final class YearPictures {

  private final WorkYear work;

  YearPictures(WorkYear work) {
    this.work = work;
  }

  /** Three sorts of hours: more bands than these can't be told apart when small. */
  private enum Band {
    UNDER_THE_HORSE("under the horse", Set.of(HoursMeasure.UNDER_THE_HORSE)),
    DRIVING("driving", Set.of(HoursMeasure.DRIVING)),
    THE_REST("shaping, making, grinding, setting up", Set.of());

    private final String title;
    private final Set<HoursMeasure> measures;

    Band(String title, Set<HoursMeasure> measures) {
      this.title = title;
      this.measures = measures;
    }

    private boolean holds(HoursMeasure measure) {
      return measure != HoursMeasure.IN_ALL
          && (this == THE_REST
              ? !UNDER_THE_HORSE.measures.contains(measure) && !DRIVING.measures.contains(measure)
              : measures.contains(measure));
    }
  }

  /** A column per week, its height the hours, its pattern the sort of work. */
  Block.Picture weeks() {
    List<FigurePeriod> weeks = work.year().weeks();
    List<Chart.Series> series = new ArrayList<>();
    for (Band band : List.of(Band.UNDER_THE_HORSE, Band.THE_REST, Band.DRIVING)) {
      series.add(
          new Chart.Series(band.title, weeks.stream().map(week -> hours(week, band)).toList()));
    }
    return new Block.Picture(
        "The year, week by week",
        weeksInWords(weeks),
        new Chart.Columns(
            "the week's Monday",
            "hours",
            weeks.stream().map(week -> work.text().shortDay(monday(week))).toList(),
            series,
            true,
            false,
            limit("weekly limit", work.limits().weeklyHours())));
  }

  private double hours(FigurePeriod week, Band band) {
    return List.of(HoursMeasure.values()).stream()
        .filter(band::holds)
        .mapToDouble(measure -> work.load(week).hours(measure))
        .sum();
  }

  private static LocalDate monday(FigurePeriod week) {
    return week.from().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private String weeksInWords(List<FigurePeriod> weeks) {
    return weeks.stream()
        .max(Comparator.comparingDouble(week -> work.load(week).hours()))
        .filter(week -> work.load(week).hours() > 0)
        .map(
            week ->
                "The hardest is the week of "
                    + work.text().weekOf(week.from())
                    + " with "
                    + work.text().hours(work.load(week).hours())
                    + ".")
        .orElse("No hours in the year to date.");
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
