package clenchbook.workload;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.Minutes;
import clenchbook.workload.hours.WorkDay;
import clenchbook.workload.hours.WorkDays;
import clenchbook.workload.methods.MethodScore;
import clenchbook.workload.posture.TrunkPosture;
import clenchbook.workload.scores.YearScores;
import clenchbook.workload.strain.TaskRating;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The year's figures by period and measure: the year, its months, its weeks, its days. */
final class WorkloadFigures {

  /** Horse-visits a day worked. */
  static final String HORSES_A_DAY = "horses per day worked";

  /** How much of the hours was measured. */
  static final String SHARE_MEASURED = "share measured";

  /** Last year's hours up to the same day. */
  static final String LAST_YEAR_TO_DATE = "hours in all, last year to the same day";

  /** Last year's hours. */
  static final String LAST_YEAR = "hours in all, last year";

  private static final OptionalDouble NO_LIMIT = OptionalDouble.empty();

  private final WorkYear work;
  private final FigureRows rows = new FigureRows();

  private WorkloadFigures(WorkYear work) {
    this.work = work;
  }

  static FigureTable of(WorkYear work) {
    WorkloadFigures figures = new WorkloadFigures(work);
    figures.addYear();
    work.year().months().forEach(figures::addMonth);
    work.year().weeks().forEach(figures::addWeek);
    work.worked().forEach(figures::addDay);
    return figures.rows.table();
  }

  private void addYear() {
    FigurePeriod year = work.year();
    addHours(year, work.limits().yearlyHours());
    addCounts(year, NO_LIMIT);
    addDays(year, true);
    rows.add(
        year.name(),
        "projected hours",
        work.projection().hours(),
        2,
        "hours",
        work.limits().yearlyHours(),
        work.projection().basis().english());
    if (work.lastYear() > 0) {
      String basis = work.bookBegins().map(day -> "the book begins " + day).orElse("last year");
      rows.add(year.name(), LAST_YEAR_TO_DATE, work.lastYearToDate(), 2, "hours", basis);
      rows.add(year.name(), LAST_YEAR, work.lastYear(), 2, "hours", basis);
    }
    if (work.unsaid() > 0) {
      rows.add(
          year.name(), "shoes without shaping said", work.unsaid(), 0, "shoes", "counted as cold");
    }
    addSummaries(year.name());
    rows.add(
        year.name(),
        "measures over their limit",
        Excess.of(work).stream().filter(Excess::over).count(),
        0,
        "measures",
        "worst day, week or year against its limit or published value");
    addHolds(year.name());
    new OutlookFigures(work, rows).add(year.name());
    AbsentMethod.of(work)
        .forEach(
            absent ->
                rows.addAbsent(
                    year.name(), absent.measure().name().english(), "", absent.why().english()));
  }

  private void addMonth(FigurePeriod month) {
    addHours(month, NO_LIMIT);
    addCounts(month, NO_LIMIT);
    addDays(month, true);
  }

  private void addWeek(FigurePeriod week) {
    addHours(week, work.limits().weeklyHours());
    addCounts(week, NO_LIMIT);
    addDays(week, false);
  }

  private void addDay(WorkDay day) {
    FigurePeriod period = FigurePeriod.day(day.date());
    addHours(period, NO_LIMIT);
    addCounts(period, work.limits().horsesPerDay());
    for (YearScores.DayScore score : work.scores().on(day.date())) {
      addScore(
          period.name(),
          score.score().measure().name().english(),
          score.number(),
          score.score(),
          "");
    }
  }

  private void addScore(
      String period, String measure, double number, MethodScore score, String note) {
    String limit = score.guidanceName().map(name -> "; limit = " + name.english()).orElse("");
    String basis = note.isEmpty() ? score.basis() : note;
    rows.add(
        period,
        measure,
        number,
        2,
        score.unit().written().english(),
        score.guidance(),
        basis + limit);
  }

  private void addHours(FigurePeriod period, OptionalDouble limitInAll) {
    Load load = work.load(period);
    for (HoursMeasure measure : HoursMeasure.values()) {
      Minutes minutes = load.minutes(measure);
      rows.add(
          period.name(),
          measure.measure(),
          minutes.hours(),
          2,
          "hours",
          measure == HoursMeasure.IN_ALL ? limitInAll : NO_LIMIT,
          minutes.basis().english());
    }
  }

  private void addCounts(FigurePeriod period, OptionalDouble horseLimit) {
    Load load = work.load(period);
    String name = period.name();
    rows.add(name, "horses", load.horses(), 0, "horse-visits", horseLimit, "counted in visits");
    rows.add(name, "shoes nailed", load.shoes().nailed(), 0, "shoes", "counted in visits");
    work.ratings()
        .blows(load.shoes())
        .ifPresent(
            blows ->
                rows.add(name, "blows", blows, 0, "blows", "own Blows per shoe times the shoes"));
  }

  private void addDays(FigurePeriod period, boolean withRun) {
    Load load = work.load(period);
    String name = period.name();
    rows.add(name, "days worked", load.daysWorked(), 0, "days", "counted in visits");
    if (withRun) {
      Optional<WorkDays.Run> run = work.days().longestRun(period.from(), period.to());
      rows.add(
          name,
          "longest run of days",
          run.map(WorkDays.Run::days).orElse(0),
          0,
          "days",
          run.map(days -> "from " + days.first() + " to " + days.last()).orElse("none"));
    }
    if (load.daysWorked() > 0) {
      rows.add(
          name,
          HORSES_A_DAY,
          (double) load.horses() / load.daysWorked(),
          2,
          "horse-visits",
          "counted in visits");
      rows.add(name, SHARE_MEASURED, 100 * load.shareMeasured(), 1, "%", "minutes measured of all");
    }
  }

  private void addSummaries(String year) {
    List<YearScores.Summary> summaries = work.scores().summaries();
    for (YearScores.Summary summary : summaries) {
      MethodScore score = summary.worst().score();
      addScore(
          year,
          summary.measure().name().english() + ", typical day",
          summary.typical(),
          score,
          "the middle one of " + summary.days() + (summary.days() == 1 ? " day" : " days"));
      addScore(
          year,
          summary.measure().name().english() + ", worst day",
          summary.worst().number(),
          score,
          "on " + summary.worst().date() + "; " + score.basis());
    }
  }

  private void addHolds(String year) {
    for (TaskRating rating : work.holds()) {
      TrunkPosture.longestHoldMinutes(rating.trunkDegrees().orElseThrow())
          .number()
          .ifPresent(
              allowed ->
                  rows.add(
                      year,
                      AbsentMethod.holdMeasure(rating).name().english(),
                      rating.longestHoldSeconds().orElseThrow() / 60,
                      2,
                      "minutes",
                      OptionalDouble.of(allowed),
                      "own Longest hold at own Trunk deg; limit = the standard's holding time"));
    }
  }
}
