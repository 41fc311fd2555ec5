package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.LimitWarnings;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.Minutes;
import clenchbook.workload.hours.WorkDay;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The hardest days and weeks, and the longest run without rest. */
final class HardestSection {

  private static final int HARDEST = 5;

  private final WorkYear work;
  private final HoursSection hours;

  HardestSection(WorkYear work) {
    this.work = work;
    this.hours = new HoursSection(work);
  }

  List<Block> blocks() {
    return List.of(
        new Block.Heading(1, "The hardest days and weeks"),
        days(),
        weeks(),
        new Block.Paragraph(runInWords()));
  }

  private Block days() {
    return hardest(
        "Day",
        work.worked().stream()
            .filter(WorkDay::worked)
            .sorted(
                Comparator.comparingDouble((WorkDay day) -> -day.load().hours())
                    .thenComparing(WorkDay::date))
            .map(day -> new Hard(work.text().weekday(day.date()), day.load())),
        "Days by hours in all");
  }

  private Block weeks() {
    return hardest(
        "Week",
        work.year().weeks().stream()
            .filter(week -> work.load(week).hours() > 0)
            .sorted(
                Comparator.comparingDouble((FigurePeriod week) -> -work.load(week).hours())
                    .thenComparing(FigurePeriod::from))
            .map(week -> new Hard("Week of " + work.text().weekOf(week.from()), work.load(week))),
        "Weeks by hours in all");
  }

  /** A day or week and what it asked. */
  private record Hard(String name, Load load) {
    private Minutes minutes(HoursMeasure measure) {
      return load.minutes(measure);
    }
  }

  private Block hardest(String what, Stream<Hard> hardestFirst, String caption) {
    return TableOf.rows(hardestFirst.limit(HARDEST).toList())
        .words(what, 4, Hard::name)
        .cell("Hours in all", 3, hard -> hours.cell(hard.minutes(HoursMeasure.IN_ALL)))
        .cell("Under the horse", 3, hard -> hours.cell(hard.minutes(HoursMeasure.UNDER_THE_HORSE)))
        .cell("Driving", 3, hard -> hours.cell(hard.minutes(HoursMeasure.DRIVING)))
        .count("Horses", 2, hard -> hard.load().horses())
        .number("Shoes", 2, hard -> work.text().whole(hard.load().shoes().nailed()))
        .captioned(caption);
  }

  /** The longest run and the horses a day. */
  String runInWords() {
    FigurePeriod year = work.year();
    Load load = work.load();
    String horses =
        load.daysWorked() == 0
            ? ""
            : " Horse-visits a day worked: "
                + work.text().number((double) load.horses() / load.daysWorked(), 2)
                + ".";
    return work.days()
            .longestRun(year.from(), year.to())
            .map(
                run ->
                    "Longest run without a day's rest: "
                        + LimitWarnings.counted(run.days(), "day")
                        + ", "
                        + work.text().date(run.first())
                        + " to "
                        + work.text().date(run.last())
                        + ".")
            .orElse("No day worked yet.")
        + horses
        + " A day of driving only is no day worked; making stands on the day its shoes were nailed"
        + " on.";
  }
}
