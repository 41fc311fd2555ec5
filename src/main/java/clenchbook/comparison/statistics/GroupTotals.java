package clenchbook.comparison.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Counts and sums per group, stratum and side: all that a weighted mean difference needs, so that
 * leaving groups out or drawing them again costs no second look at the values.
 */
final class GroupTotals {

  private static final int WIDTH = 4;

  /** Per group: stratum index, then n_a, sum_a, n_b, sum_b for each stratum it has a value in. */
  private record Cell(int stratum, double[] totals) {}

  private final List<List<Cell>> cells;
  private final int strata;

  private GroupTotals(List<List<Cell>> cells, int strata) {
    this.cells = cells;
    this.strata = strata;
  }

  /** Totals of these observations; values are taken from their common mean, against rounding. */
  static GroupTotals of(List<Observation> observations) {
    List<String> names =
        List.copyOf(new TreeSet<>(observations.stream().map(Observation::stratum).toList()));
    Map<String, Integer> index = new TreeMap<>();
    names.forEach(name -> index.put(name, index.size()));
    double centre = observations.stream().mapToDouble(Observation::value).average().orElse(0);
    Map<String, Map<Integer, double[]>> byGroup = new TreeMap<>();
    for (Observation each : observations) {
      double[] totals =
          byGroup
              .computeIfAbsent(each.group(), name -> new TreeMap<>())
              .computeIfAbsent(index.get(each.stratum()), number -> new double[WIDTH]);
      int at = each.side() == Side.A ? 0 : 2;
      totals[at]++;
      totals[at + 1] += each.value() - centre;
    }
    List<List<Cell>> cells = new ArrayList<>();
    for (Map<Integer, double[]> group : byGroup.values()) {
      List<Cell> own = new ArrayList<>();
      group.forEach((stratum, totals) -> own.add(new Cell(stratum, totals)));
      cells.add(own);
    }
    return new GroupTotals(cells, names.size());
  }

  int groups() {
    return cells.size();
  }

  int strata() {
    return strata;
  }

  /** The totals of all strata with each group counted {@code times[group]} times. */
  double[] sum(int[] times) {
    double[] sum = new double[strata * WIDTH];
    for (int group = 0; group < times.length; group++) {
      add(sum, group, times[group]);
    }
    return sum;
  }

  /** Adds a group to the totals {@code times} times; −1 takes it out. */
  void add(double[] sum, int group, int times) {
    if (times == 0) {
      return;
    }
    for (Cell cell : cells.get(group)) {
      for (int i = 0; i < WIDTH; i++) {
        sum[cell.stratum() * WIDTH + i] += times * cell.totals()[i];
      }
    }
  }

  /** The weighted mean difference; not a number where no stratum has two values on each side. */
  static double difference(double[] sum) {
    double weighted = 0;
    double weights = 0;
    for (int at = 0; at < sum.length; at += WIDTH) {
      double countA = sum[at];
      double countB = sum[at + 2];
      if (countA >= StratifiedDifference.FEWEST && countB >= StratifiedDifference.FEWEST) {
        double weight = StratifiedDifference.weight(countA, countB);
        weighted += weight * (sum[at + 1] / countA - sum[at + 3] / countB);
        weights += weight;
      }
    }
    return weights > 0 ? weighted / weights : Double.NaN;
  }
}
