package clenchbook.workload;

import clenchbook.measure.Basis;
import clenchbook.report.Block;
import clenchbook.report.Block.Cell;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.KeyFigure;
import clenchbook.report.Block.Row;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The part of the pages that says how many hours went where. */
final class HoursSection {

  private static final int HARDEST = 5;

  private final WorkYear work;

  HoursSection(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.KeyFigures(keyFigures()));
    blocks.addAll(limits());
    blocks.add(new YearPictures(work).weeks());
    blocks.add(activities());
    if (work.unsaid() > 0) {
      blocks.add(
          new Block.Paragraph(
              LimitWarnings.counted(work.unsaid(), "shoe")
                  + " nailed on without a word in Shaping: counted as cold, at the stall jack."));
    }
    
    blocks.add(new YearPictures(work).course());
    blocks.add(new Block.Paragraph(courseInWords()));
    blocks.addAll(months());
    blocks.add(new Block.Heading(1, "The hardest days and weeks"));
    blocks.add(days());
    blocks.add(weeks());
    blocks.add(new Block.Paragraph(runInWords()));
    return blocks;
  }

  List<KeyFigure> keyFigures() {
    Load load = work.load();
    List<KeyFigure> figures = new ArrayList<>();
    figures.add(hours("Hours in all, year to date", load.minutes(HoursMeasure.IN_ALL)));
    figures.add(
        new KeyFigure(
            "Projected for the year",
            Digits.fixed(work.projection().hours(), 2) + " h",
            Optional.of(load.minutes(HoursMeasure.IN_ALL).weakest())));
    
    figures.add(new KeyFigure("Horse-visits", Integer.toString(load.horses()), Optional.empty()));
    figures.add(
        new KeyFigure(
            "Share of hours measured",
            Digits.fixed(100 * load.shareMeasured(), 1) + " %",
            Optional.empty()));
    return figures;
  }

  private static KeyFigure hours(String label, Minutes minutes) {
    return new KeyFigure(
        label, Digits.fixed(minutes.hours(), 2) + " h", Optional.of(minutes.weakest()));
  }

  private List<Block> limits() {
    List<Block> blocks = new ArrayList<>();
    work.warnings().forEach(words -> blocks.add(new Block.Caution(words)));
    if (blocks.isEmpty()) {
      blocks.add(new Block.Paragraph(withoutWarning()));
    }
    return blocks;
  }

  private String withoutWarning() {
    OwnLimits limits = work.limits();
    boolean none =
        limits.yearlyHours().isEmpty()
            && limits.weeklyHours().isEmpty()
            && limits.horsesPerDay().isEmpty();
    return none
        ? "No limits are set. Give Yearly hours limit, Weekly hours limit or Horses per day limit"
            + " in Settings and this page warns when one is passed or will be."
        : "None of your limits was passed, and the projection passes none.";
  }

  private Block activities() {
    List<Row> rows = new ArrayList<>();
    for (HoursMeasure measure : HoursMeasure.values()) {
      Minutes minutes = work.load().minutes(measure);
      rows.add(
          new Row(
              List.of(
                  Cell.of(measure.measure()),
                  cell(minutes),
                  Cell.of(minutes.total() > 0 ? minutes.basis() : "")),
              measure == HoursMeasure.IN_ALL));
    }
    return new Block.Table(
        "Where the hours went, "
            + Dates.day(work.year().from())
            + " to "
            + Dates.day(work.year().to()),
        List.of(Column.words("Measure", 4), Column.number("Hours", 2), Column.words("Rests on", 6)),
        rows);
  }

  private static Cell cell(Minutes minutes) {
    String text = Digits.fixed(minutes.hours(), 2);
    return minutes.total() > 0 ? Cell.of(text, minutes.weakest()) : Cell.of(text);
  }

  private String courseInWords() {
    String projected =
        "Hours in all: "
            + Digits.fixed(work.projection().toDate(), 2)
            + " to date, "
            + Digits.fixed(work.projection().hours(), 2)
            + " projected for the year ("
            + work.projection().basis()
            + ").";
    return work.lastYear() > 0
        ? projected
            + " Last year: "
            + Digits.fixed(work.lastYearToDate(), 2)
            + " to the same day, "
            + Digits.fixed(work.lastYear(), 2)
            + " in all"
            + work.bookBegins().map(day -> " (the book begins " + Dates.day(day) + ")").orElse("")
            + "."
        : projected + " The book holds no work of last year to compare with.";
  }

  private List<Block> months() {
    List<Row> counts = new ArrayList<>();
    List<Row> hours = new ArrayList<>();
    for (Period month : work.year().months()) {
      counts.add(counts(Dates.month(month.from()), month, false));
      hours.add(hours(Dates.month(month.from()), work.load(month), false));
    }
    LocalDate start = work.year().from();
    // The first month is whole, so a year that starts within it is not the sum of the rows.
    boolean sum = start.getDayOfMonth() == 1;
    String toDate = sum ? "Year to date" : "From " + Dates.day(start);
    counts.add(counts(toDate, work.year(), sum));
    hours.add(hours(toDate, work.load(), sum));
    return List.of(
        new Block.Table("Month by month", COUNT_COLUMNS, counts),
        new Block.Table("Month by month, hours", hourColumns(), hours));
  }

  private static final List<Column> COUNT_COLUMNS =
      List.of(
          Column.words("Month", 4),
          Column.number("Days worked", 3),
          Column.number("Longest run of days", 4),
          Column.number("Horse-visits", 3),
          Column.number("a day worked", 3),
          Column.number("Shoes nailed", 3),
          Column.number("Blows", 3),
          Column.number("Measured, %", 3));

  private Row counts(String name, Period period, boolean total) {
    Load load = work.load(period);
    OptionalDouble blows = work.ratings().blows(load.shoes());
    int run =
        work.days().longestRun(period.from(), period.to()).map(WorkDays.Run::days).orElse(0);
    boolean worked = load.daysWorked() > 0;
    return new Row(
        Stream.of(
                name,
                Integer.toString(load.daysWorked()),
                Integer.toString(run),
                Integer.toString(load.horses()),
                worked ? Digits.fixed((double) load.horses() / load.daysWorked(), 2) : "",
                Digits.whole(load.shoes().nailed()),
                blows.isPresent() ? Digits.whole(blows.getAsDouble()) : "",
                worked ? Digits.fixed(100 * load.shareMeasured(), 1) : "")
            .map(Cell::of)
            .toList(),
        total);
  }

  private static List<Column> hourColumns() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Month", 4));
    for (HoursMeasure measure : HoursMeasure.values()) {
      columns.add(Column.number(measure.shortName(), 3));
    }
    return columns;
  }

  private static Row hours(String name, Load load, boolean total) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(name));
    for (HoursMeasure measure : HoursMeasure.values()) {
      cells.add(Cell.of(Digits.fixed(load.hours(measure), 2)));
    }
    return new Row(cells, total);
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
            cell(load.minutes(HoursMeasure.IN_ALL)),
            cell(load.minutes(HoursMeasure.UNDER_THE_HORSE)),
            cell(load.minutes(HoursMeasure.DRIVING)),
            Cell.of(Integer.toString(load.horses())),
            Cell.of(Digits.whole(load.shoes().nailed()))),
        false);
  }

  private String runInWords() {
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
        + " A day of driving only is no day worked; making stands on the day its shoes were nailed on.";
  }

  /** What a figure without minutes of its own rests on. */
  static Optional<Basis> basis(Load load) {
    return Optional.of(load.minutes(HoursMeasure.IN_ALL).weakest());
  }
}
