package clenchbook.workload;

import clenchbook.report.Block;
import clenchbook.report.Block.Cell;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.Row;
import java.util.Comparator;
import java.util.List;

/** The hardest days and weeks, and the longest run without rest. */
final class HardestSection {

  private static final int HARDEST = 5;

  private final WorkYear work;

  HardestSection(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    return List.of(
        new Block.Heading(1, "The hardest days and weeks"),
        days(),
        weeks(),
        new Block.Paragraph(runInWords()));
  }

  private Block days() {
    List<Row> rows =
        work.worked().stream()
            .filter(WorkDay::worked)
            .sorted(
                Comparator.comparingDouble((WorkDay day) -> -day.load().hours())
                    .thenComparing(WorkDay::date))
            .limit(HARDEST)
            .map(day -> hardest(Dates.weekday(day.date()), day.load()))
            .toList();
    return new Block.Table("Days by hours in all", hardestColumns("Day"), rows);
  }

  private Block weeks() {
    List<Row> rows =
        work.year().weeks().stream()
            .filter(week -> work.load(week).hours() > 0)
            .sorted(
                Comparator.comparingDouble((Period week) -> -work.load(week).hours())
                    .thenComparing(Period::from))
            .limit(HARDEST)
            .map(week -> hardest(week.name(), work.load(week)))
            .toList();
    return new Block.Table("Weeks by hours in all", hardestColumns("Week"), rows);
  }

  private static List<Column> hardestColumns(String what) {
    return List.of(
        Column.words(what, 4),
        Column.number("Hours in all", 3),
        Column.number("Under the horse", 3),
        Column.number("Driving", 3),
        Column.number("Horses", 2),
        Column.number("Shoes", 2));
  }

  private static Row hardest(String name, Load load) {
    return new Row(
        List.of(
            Cell.of(name),
            HoursSection.cell(load.minutes(HoursMeasure.IN_ALL)),
            HoursSection.cell(load.minutes(HoursMeasure.UNDER_THE_HORSE)),
            HoursSection.cell(load.minutes(HoursMeasure.DRIVING)),
            Cell.of(Integer.toString(load.horses())),
            Cell.of(Digits.whole(load.shoes().nailed()))),
        false);
  }

  /** The longest run and the horses a day. */
  String runInWords() {
    Period year = work.year();
    Load load = work.load();
    String horses =
        load.daysWorked() == 0
            ? ""
            : " Horse-visits a day worked: "
                + Digits.fixed((double) load.horses() / load.daysWorked(), 2)
                + ".";
    return work.days()
            .longestRun(year.from(), year.to())
            .map(
                run ->
                    "Longest run without a day's rest: "
                        + LimitWarnings.counted(run.days(), "day")
                        + ", "
                        + Dates.day(run.first())
                        + " to "
                        + Dates.day(run.last())
                        + ".")
            .orElse("No day worked yet.")
        + horses
        + " A day of driving only is no day worked; making stands on the day its shoes were nailed"
        + " on.";
  }
}
