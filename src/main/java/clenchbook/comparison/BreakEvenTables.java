package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.breakeven.Sensitivity;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import java.util.List;

/** The break-evens, their curve and what they hang on, as tables for files. */
final class BreakEvenTables {
  private BreakEvenTables() {}

  static List<FigureTable> of(Comparisons all) {
    return List.of(breakEven(all), curve(all), sensitivity(all));
  }

  private static String unit(Comparisons all, String unit) {
    return unit.equals("money") ? all.rates().currency() : unit;
  }

  private static FigureTable breakEven(Comparisons all) {
    return FiguresOf.rows(all.breakEvens())
        .column("question", each -> each.question().title())
        .column("quantity", each -> each.quantity())
        .column("value", each -> Numbers.file(each.value()))
        .column("unit", each -> unit(all, each.unit()))
        .column("low", each -> Numbers.low(each.interval()))
        .column("high", each -> Numbers.high(each.interval()))
        .column("basis", each -> each.basis())
        .column("more_jobs_needed", each -> more(all, each))
        .named("break-even");
  }

  /** What a figure that may be none would take to be told. */
  private static String more(Comparisons all, BreakEven figure) {
    return figure.quantity().equals(BreakEven.EXTRA_PRICE)
        ? new BreakEvenReading(all).moreSets(figure).filed()
        : "";
  }

  private static FigureTable curve(Comparisons all) {
    return FiguresOf.rows(all.curve())
        .count("shoes_per_stop", point -> point.shoes())
        .column("gain", point -> Numbers.file(point.gain()))
        .column("low", point -> Numbers.low(point.interval()))
        .column("high", point -> Numbers.high(point.interval()))
        .column("unit", point -> all.rates().currency())
        .named("break-even-curve");
  }

  private static FigureTable sensitivity(Comparisons all) {
    return FiguresOf.rows(all.sensitivities())
        .column("input", each -> each.input())
        .count("change_percent", each -> each.percent())
        .column("question", each -> each.question().title())
        .column("quantity", each -> each.quantity())
        .column("value", each -> Numbers.file(each.value()))
        .column("today", each -> Numbers.file(each.today()))
        .column("change", each -> Numbers.file(each.change()))
        .column("unit", each -> unit(all, each.unit()))
        .column(
            "shoes_at_stop",
            each -> each.quantity().equals(Sensitivity.GAIN) ? String.valueOf(all.stopShoes()) : "")
        .named("sensitivity");
  }
}
