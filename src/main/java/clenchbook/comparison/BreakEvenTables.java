package clenchbook.comparison;

import clenchbook.comparison.breakeven.BreakEven;
import clenchbook.comparison.breakeven.Sensitivity;
import clenchbook.reports.blocks.FigureTable;
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
    return FigureTable.of(
        "break-even",
        "question,quantity,value,unit,low,high,basis,more_jobs_needed",
        all.breakEvens().stream()
            .map(
                each ->
                    List.of(
                        each.question().title(),
                        each.quantity(),
                        Numbers.file(each.value()),
                        unit(all, each.unit()),
                        Numbers.low(each.interval()),
                        Numbers.high(each.interval()),
                        each.basis(),
                        more(all, each)))
            .toList());
  }

  /** What a figure that may be none would take to be told. */
  private static String more(Comparisons all, BreakEven figure) {
    return figure.quantity().equals(BreakEven.EXTRA_PRICE)
        ? new BreakEvenReading(all).moreSets(figure).filed()
        : "";
  }

  private static FigureTable curve(Comparisons all) {
    return FigureTable.of(
        "break-even-curve",
        "shoes_per_stop,gain,low,high,unit",
        all.curve().stream()
            .map(
                point ->
                    List.of(
                        String.valueOf(point.shoes()),
                        Numbers.file(point.gain()),
                        Numbers.low(point.interval()),
                        Numbers.high(point.interval()),
                        all.rates().currency()))
            .toList());
  }

  private static FigureTable sensitivity(Comparisons all) {
    return FigureTable.of(
        "sensitivity",
        "input,change_percent,question,quantity,value,today,change,unit,shoes_at_stop",
        all.sensitivities().stream()
            .map(
                each ->
                    List.of(
                        each.input(),
                        String.valueOf(each.percent()),
                        each.question().title(),
                        each.quantity(),
                        Numbers.file(each.value()),
                        Numbers.file(each.today()),
                        Numbers.file(each.change()),
                        unit(all, each.unit()),
                        each.quantity().equals(Sensitivity.GAIN)
                            ? String.valueOf(all.stopShoes())
                            : ""))
            .toList());
  }
}
