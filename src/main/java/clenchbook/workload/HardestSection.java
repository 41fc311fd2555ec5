package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.Minutes;
import clenchbook.workload.hours.WorkDay;
import java.util.ArrayList;
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
        new Block.Heading(1, work.text().say("workload.hardest")),
        days(),
        weeks(),
        new Block.Paragraph(runInWords()));
  }

  private Block days() {
    return hardest(
        work.text().say("workload.column.day"),
        work.worked().stream()
            .filter(WorkDay::worked)
            .sorted(
                Comparator.comparingDouble((WorkDay day) -> -day.load().hours())
                    .thenComparing(WorkDay::date))
            .map(day -> new Hard(work.text().weekday(day.date()), day.load())),
        work.text().say("workload.hardest.days"));
  }

  private Block weeks() {
    return hardest(
        work.text().say("workload.column.week"),
        work.year().weeks().stream()
            .filter(week -> work.load(week).hours() > 0)
            .sorted(
                Comparator.comparingDouble((FigurePeriod week) -> -work.load(week).hours())
                    .thenComparing(FigurePeriod::from))
            .map(week -> new Hard(weekOf(week), work.load(week))),
        work.text().say("workload.hardest.weeks"));
  }

  private String weekOf(FigurePeriod week) {
    return work.text().say("workload.hardest.weekOf", work.text().weekOf(week.from()));
  }

  /** A day or week and what it asked. */
  private record Hard(String name, Load load) {
    private Minutes minutes(HoursMeasure measure) {
      return load.minutes(measure);
    }
  }

  private Block hardest(String what, Stream<Hard> hardestFirst, String caption) {
    FigureText text = work.text();
    return TableOf.rows(hardestFirst.limit(HARDEST).toList())
        .words(what, 4, Hard::name)
        .cell(
            text.say("workload.column.hoursInAll"),
            3,
            hard -> hours.cell(hard.minutes(HoursMeasure.IN_ALL)))
        .cell(
            text.say("workload.column.underTheHorse"),
            3,
            hard -> hours.cell(hard.minutes(HoursMeasure.UNDER_THE_HORSE)))
        .cell(
            text.say("workload.column.driving"),
            3,
            hard -> hours.cell(hard.minutes(HoursMeasure.DRIVING)))
        .count(text.say("workload.column.horses"), 2, hard -> hard.load().horses())
        .number(
            text.say("workload.column.shoes"), 2, hard -> text.whole(hard.load().shoes().nailed()))
        .captioned(caption);
  }

  /** The longest run and the horses a day. */
  String runInWords() {
    List<String> sentences = new ArrayList<>();
    sentences.add(longestRun());
    if (work.load().daysWorked() > 0) {
      double aDay = (double) work.load().horses() / work.load().daysWorked();
      sentences.add(work.text().say("workload.run.horsesADay", work.text().number(aDay, 2)));
    }
    sentences.add(work.text().say("workload.run.whatCounts"));
    return String.join(" ", sentences);
  }

  private String longestRun() {
    FigureText text = work.text();
    return work.days()
        .longestRun(work.year().from(), work.year().to())
        .map(
            run ->
                text.say(
                    "workload.run.longest",
                    run.days(),
                    text.date(run.first()),
                    text.date(run.last())))
        .orElseGet(() -> text.say("workload.run.none"));
  }
}
