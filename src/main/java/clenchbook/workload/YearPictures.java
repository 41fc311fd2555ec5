package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.texts.Message;
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
  private final FigureText text;

  YearPictures(WorkYear work) {
    this.work = work;
    this.text = work.text();
  }

  /** Three sorts of hours: more bands than these can't be told apart when small. */
  private enum Band {
    UNDER_THE_HORSE("workload.band.underTheHorse", Set.of(HoursMeasure.UNDER_THE_HORSE)),
    DRIVING("workload.band.driving", Set.of(HoursMeasure.DRIVING)),
    THE_REST("workload.band.theRest", Set.of());

    private final Message title;
    private final Set<HoursMeasure> measures;

    Band(String key, Set<HoursMeasure> measures) {
      this.title = Message.of(key);
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
          new Chart.Series(
              text.say(band.title), weeks.stream().map(week -> hours(week, band)).toList()));
    }
    return new Block.Picture(
        text.say("workload.weeks"),
        weeksInWords(weeks),
        new Chart.Columns(
            text.say("workload.weeks.monday"),
            text.say("workload.axis.hours"),
            weeks.stream().map(week -> text.shortDay(monday(week))).toList(),
            series,
            true,
            false,
            limit(text.say("workload.weeks.limit"), work.limits().weeklyHours())));
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
                text.say(
                    "workload.weeks.hardest",
                    text.weekOf(week.from()),
                    text.hours(work.load(week).hours())))
        .orElseGet(() -> text.say("workload.weeks.none"));
  }

  private static List<Chart.Limit> limit(String name, OptionalDouble value) {
    return value.isPresent() ? List.of(new Chart.Limit(name, value.getAsDouble())) : List.of();
  }

  /** The hours added up, against last year, the projection and the yearly limit. */
  Block course() {
    List<Chart.Line> lines = new ArrayList<>();
    LocalDate start = work.year().from();
    lines.add(
        new Chart.Line(text.say("workload.sum.thisYear"), added(start, work.year().to()), false));
    if (work.lastYear() > 0) {
      lines.add(
          new Chart.Line(
              text.say("workload.sum.lastYear"),
              fromFirstWork(start.minusYears(1), start.minusDays(1)),
              true));
    }
    if (work.year().to().isBefore(work.projection().end())) {
      lines.add(new Chart.Line(text.say("workload.sum.projected"), projected(), true));
    }
    return new Block.Picture(
        text.say("workload.sum"),
        courseInWords(),
        new Chart.Lines(
            text.say("workload.sum.weeks"),
            text.say("workload.axis.hours"),
            lines,
            limit(text.say("workload.sum.limit"), work.limits().yearlyHours()),
            List.of()));
  }

  private String courseInWords() {
    if (work.lastYear() > 0) {
      return work.whole()
          ? text.say("workload.sum.yearWithLast")
          : text.say("workload.sum.toDateWithLast");
    }
    return work.whole() ? text.say("workload.sum.year") : text.say("workload.sum.toDate");
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
