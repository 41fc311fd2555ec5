package clenchbook.workload;

import clenchbook.report.Block;
import clenchbook.report.Block.Cell;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.Row;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** The year month by month: what was done, and where the hours went. */
final class MonthTables {

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

  private final WorkYear work;

  MonthTables(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    return List.of(counts(), hours());
  }

  /** Days, horses and shoes; needs no minutes. */
  Block counts() {
    return new Block.Table("Month by month", COUNT_COLUMNS, rows(this::counts));
  }

  private Block hours() {
    return new Block.Table("Month by month, hours", hourColumns(), rows(this::hours));
  }

  private List<Row> rows(BiFunction<String, Period, List<Cell>> cells) {
    List<Row> rows = new ArrayList<>();
    for (Period month : work.year().months()) {
      rows.add(new Row(cells.apply(Dates.month(month.from()), month), false));
    }
    LocalDate start = work.year().from();
    // The first month is whole, so a year that starts within it is not the sum of the rows.
    boolean sum = start.getDayOfMonth() == 1;
    String toDate = sum ? (work.whole() ? "The year" : "Year to date") : "From " + Dates.day(start);
    rows.add(new Row(cells.apply(toDate, work.year()), sum));
    return rows;
  }

  private List<Cell> counts(String name, Period period) {
    Load load = work.load(period);
    OptionalDouble blows = work.ratings().blows(load.shoes());
    int run = work.days().longestRun(period.from(), period.to()).map(WorkDays.Run::days).orElse(0);
    boolean worked = load.daysWorked() > 0;
    return Stream.of(
            name,
            Integer.toString(load.daysWorked()),
            Integer.toString(run),
            Digits.whole(load.horses()),
            worked ? Digits.fixed((double) load.horses() / load.daysWorked(), 2) : "",
            Digits.whole(load.shoes().nailed()),
            blows.isPresent() ? Digits.whole(blows.getAsDouble()) : "",
            worked ? Digits.fixed(100 * load.shareMeasured(), 1) : "")
        .map(Cell::of)
        .toList();
  }

  private static List<Column> hourColumns() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Month", 4));
    for (HoursMeasure measure : HoursMeasure.values()) {
      columns.add(Column.number(measure.shortName(), 3));
    }
    return columns;
  }

  private List<Cell> hours(String name, Period period) {
    Load load = work.load(period);
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(name));
    for (HoursMeasure measure : HoursMeasure.values()) {
      cells.add(Cell.of(Digits.fixed(load.hours(measure), 2)));
    }
    return cells;
  }
}
