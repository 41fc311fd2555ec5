package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.hours.FigurePeriod;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.WorkDays;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The year month by month: what was done, and where the hours went. */
final class MonthTables {

  private final WorkYear work;

  MonthTables(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    return List.of(counts(), hours());
  }

  /** Days, horses and shoes; needs no minutes. */
  Block counts() {
    FigureText text = work.text();
    return spans()
        .count(text.say("workload.column.daysWorked"), 3, span -> span.load().daysWorked())
        .count(text.say("workload.column.longestRun"), 4, this::longestRun)
        .number(
            text.say("workload.column.horseVisits"), 3, span -> text.whole(span.load().horses()))
        .number(
            text.say("workload.column.aDayWorked"),
            3,
            span ->
                span.ifWorked(load -> text.number((double) load.horses() / load.daysWorked(), 2)))
        .number(
            text.say("workload.column.shoesNailed"),
            3,
            span -> text.whole(span.load().shoes().nailed()))
        .number(text.say("workload.column.blows"), 3, this::blows)
        .number(
            text.say("workload.column.measured"),
            3,
            span -> span.ifWorked(load -> text.number(100 * load.shareMeasured(), 1)))
        .captioned(text.say("workload.months"));
  }

  private Block hours() {
    TableOf<Span> table = spans();
    for (HoursMeasure measure : HoursMeasure.values()) {
      table.number(
          work.text().say(measure.shortTitle()),
          3,
          span -> work.text().hours(span.load().hours(measure)));
    }
    return table.captioned(work.text().say("workload.months.hours"));
  }

  /** A month, or the year to date, which is a total where it is the sum of the months. */
  private record Span(String name, FigurePeriod period, Load load, boolean total) {
    private String ifWorked(Function<Load, String> figure) {
      return load.daysWorked() > 0 ? figure.apply(load) : "";
    }
  }

  private TableOf<Span> spans() {
    List<Span> spans = new ArrayList<>();
    for (FigurePeriod month : work.year().months()) {
      spans.add(
          new Span(
              work.text().month(YearMonth.from(month.from())), month, work.load(month), false));
    }
    LocalDate start = work.year().from();
    // The first month is whole, so a year that starts within it is not the sum of the rows.
    boolean sum = start.getDayOfMonth() == 1;
    spans.add(new Span(sum ? soFar() : since(start), work.year(), work.load(work.year()), sum));
    return TableOf.rows(spans)
        .words(work.text().say("workload.column.month"), 4, Span::name)
        .totalsWhere(Span::total);
  }

  private String soFar() {
    return work.whole()
        ? work.text().say("workload.months.year")
        : work.text().say("workload.months.toDate");
  }

  private String since(LocalDate start) {
    return work.text().say("workload.months.from", work.text().date(start));
  }

  private int longestRun(Span span) {
    return work.days()
        .longestRun(span.period().from(), span.period().to())
        .map(WorkDays.Run::days)
        .orElse(0);
  }

  private String blows(Span span) {
    OptionalDouble blows = work.ratings().blows(span.load().shoes());
    return blows.isPresent() ? work.text().whole(blows.getAsDouble()) : "";
  }
}
