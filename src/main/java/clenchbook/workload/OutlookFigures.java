package clenchbook.workload;

import clenchbook.workload.hours.PastYear;
import clenchbook.workload.outlook.ChangedWeek;
import clenchbook.workload.outlook.Mix;
import java.util.OptionalDouble;

/** The figures that look beyond the year to date: Stop age, hot shaping, changed weeks. */
final class OutlookFigures {

  /** What hot shaping takes more than cold over a year. */
  static final String HOT_SHAPING = "hot shaping less cold, minutes a year";

  /** What hot shaping takes more than cold, a shoe. */
  static final String HOT_PER_SHOE = "hot shaping less cold, minutes a shoe";

  /** What setting the forge up takes over a year. */
  static final String HOT_SET_UP = "setting up for hot shaping, minutes a year";

  /** Both together. */
  static final String HOT_IN_ALL = "hot shaping with setting up, minutes a year";

  private final WorkYear work;
  private final FigureRows rows;

  OutlookFigures(WorkYear work, FigureRows rows) {
    this.work = work;
    this.rows = rows;
  }

  void add(String year) {
    addStopAge(year);
    addHotShaping(year);
    work.changes().forEach(change -> addChange(year, change));
  }

  /** The past year in words, as the basis of a figure. */
  static String pastYear(WorkYear work) {
    PastYear past = work.past();
    return past.from() + " to " + past.to() + (past.whole() ? "" : ", scaled up to a year");
  }

  /** What the measure of a mix up to Stop age is called. */
  static String toStopAge(String what, Mix mix) {
    return what + " to Stop age, " + mix.words().english();
  }

  /** What the measure of a changed week is called. */
  static String changed(ChangedWeek.Change change, String what) {
    return "changed week, " + change.name().english() + ": " + what;
  }

  private void addStopAge(String year) {
    String basis = "the past year over again, " + pastYear(work);
    work.stop()
        .ifPresent(
            stop -> {
              rows.add(year, "years to Stop age", stop.years(), 2, "years", "to the year's end");
              for (Mix mix : Mix.values()) {
                stop.blows(mix)
                    .ifPresent(
                        blows -> rows.add(year, toStopAge("blows", mix), blows, 0, "blows", basis));
                stop.stallJackHours(mix)
                    .ifPresent(
                        hours ->
                            rows.add(
                                year,
                                toStopAge("hours at the stall jack", mix),
                                hours,
                                0,
                                "hours",
                                basis));
              }
            });
  }

  private void addHotShaping(String year) {
    double scale = work.past().scale();
    String basis = "the comparison of hot with cold on the shoes of " + pastYear(work);
    if (work.past().load().shoes().hotSteel() == 0) {
      return;
    }
    double setUp = work.mixed().setUpSpent() * scale;
    rows.add(year, HOT_SET_UP, setUp, 0, "minutes", pastYear(work));
    work.hotLessCold()
        .ifPresent(
            difference ->
                rows.add(
                    year,
                    HOT_PER_SHOE,
                    difference.estimate(),
                    2,
                    "minutes",
                    "the comparison of hot with cold: " + difference.verdict().word()));
    work.mixed()
        .hotShapingMinutes()
        .map(minutes -> minutes.map(each -> each * scale))
        .ifPresent(
            minutes -> {
              rows.add(year, HOT_SHAPING, minutes, 0, "minutes", basis);
              rows.add(year, HOT_IN_ALL, minutes.map(m -> m + setUp), 0, "minutes", basis);
            });
  }

  private void addChange(String year, ChangedWeek.Change change) {
    String basis = "arithmetic on " + pastYear(work);
    change
        .hours()
        .ifPresent(
            hours -> rows.add(year, changed(change, "hours in all"), hours, 1, "hours", basis));
    rows.add(
        year,
        changed(change, "horses"),
        change.horses(),
        0,
        "horse-visits",
        OptionalDouble.empty(),
        basis);
    change
        .stallJackHours()
        .ifPresent(
            hours ->
                rows.add(
                    year, changed(change, "hours at the stall jack"), hours, 1, "hours", basis));
    change
        .blows()
        .ifPresent(blows -> rows.add(year, changed(change, "blows"), blows, 0, "blows", basis));
  }
}
