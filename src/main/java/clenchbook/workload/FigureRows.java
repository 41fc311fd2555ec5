package clenchbook.workload;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.statistics.Interval;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The rows of the workload figures, in the order in which they are added. */
final class FigureRows {

  private static final List<String> COLUMNS =
      List.of(
          "period", "measure", "value", "unit", "limit", "share_of_limit", "basis", "low", "high");

  private final List<List<String>> rows = new ArrayList<>();

  /** A figure with its printed digits; a limit gives its share of it. */
  void add(
      String period,
      String measure,
      double value,
      int decimals,
      String unit,
      OptionalDouble limit,
      String basis) {
    rows.add(
        List.of(
            period,
            measure,
            Digits.fixed(value, decimals),
            unit,
            limit.isPresent() ? Digits.plain(limit.getAsDouble()) : "",
            limit.isPresent() ? Digits.rounded(value / limit.getAsDouble(), 4).toPlainString() : "",
            basis,
            "",
            ""));
  }

  /** A figure without a limit. */
  void add(String period, String measure, double value, int decimals, String unit, String basis) {
    add(period, measure, value, decimals, unit, OptionalDouble.empty(), basis);
  }

  /** A figure with the interval that the data allow. */
  void add(
      String period, String measure, Estimate estimate, int decimals, String unit, String basis) {
    Optional<Interval> interval = estimate.interval();
    rows.add(
        List.of(
            period,
            measure,
            Digits.fixed(estimate.value(), decimals),
            unit,
            "",
            "",
            basis,
            interval.map(ends -> Digits.fixed(ends.low(), decimals)).orElse(""),
            interval.map(ends -> Digits.fixed(ends.high(), decimals)).orElse("")));
  }

  /** A figure that is not there, with the reason. */
  void addAbsent(String period, String measure, String unit, String why) {
    rows.add(List.of(period, measure, "", unit, "", "", "not computed: " + why, "", ""));
  }

  /** All rows as a table. */
  FigureTable table() {
    return new FigureTable("workload", COLUMNS, rows);
  }
}
