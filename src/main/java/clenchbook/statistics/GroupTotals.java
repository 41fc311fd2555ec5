package clenchbook.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Counts and sums per group, stratum and side: all that a weighted mean difference needs, so that
 * leaving groups out or drawing them again costs no second look at the values.
 */
public final class GroupTotals {

  private static final int WIDTH = 4;

  /** The smallest weight a stratum can have is 1: two values on each side. */
  private static final double LEAST_WEIGHT = 0.5;

  /** One stratum of a group: n_a, sum_a, n_b, sum_b. */
  private record Cell(int stratum, double[] totals) {}

  private final List<List<Cell>> cells;
  private final int strata;
  private final double centre;

  private GroupTotals(List<List<Cell>> cells, int strata, double centre) {
    this.cells = cells;
    this.strata = strata;
    this.centre = centre;
  }

  /** Totals of these observations, with the groups in order of their names. */
  static GroupTotals of(List<Observation> observations) {
    return of(
        observations,
        List.copyOf(new TreeSet<>(observations.stream().map(Observation::group).toList())));
  }

  /**
   * Totals of these observations. Values are taken from their common mean, against rounding.
   *
   * @param groups the groups in the order in which they will be counted; observations of a group
   *     that is not among them are not used
   */
  public static GroupTotals of(List<Observation> observations, List<String> groups) {
    Map<String, Integer> index = new TreeMap<>();
    for (String name : new TreeSet<>(observations.stream().map(Observation::stratum).toList())) {
      index.put(name, index.size());
    }
    double centre = observations.stream().mapToDouble(Observation::value).average().orElse(0);
    Map<String, Map<Integer, double[]>> byGroup = new TreeMap<>();
    for (Observation each : observations) {
      double[] totals =
          byGroup
              .computeIfAbsent(each.group(), name -> new TreeMap<>())
              .computeIfAbsent(index.getOrDefault(each.stratum(), 0), at -> new double[WIDTH]);
      int at = each.side() == Side.A ? 0 : 2;
      totals[at]++;
      totals[at + 1] += each.value() - centre;
    }
    return new GroupTotals(cells(byGroup, groups), index.size(), centre);
  }

  private static List<List<Cell>> cells(
      Map<String, Map<Integer, double[]>> byGroup, List<String> groups) {
    List<List<Cell>> cells = new ArrayList<>();
    for (String group : groups) {
      List<Cell> own = new ArrayList<>();
      byGroup
          .getOrDefault(group, Map.of())
          .forEach((stratum, totals) -> own.add(new Cell(stratum, totals)));
      cells.add(own);
    }
    return cells;
  }

  /** How many groups there are. */
  int groups() {
    return cells.size();
  }

  /** How many strata there are. */
  int strata() {
    return strata;
  }

  /**
   * The weighted mean difference, A less B, with each group counted so many times.
   *
   * @return not a number where no stratum has two values on each side
   */
  public double difference(int[] times) {
    return difference(sum(times));
  }

  /**
   * The weighted mean of side A, with each group counted so many times and the weights of the
   * difference.
   *
   * @return not a number where no stratum has two values on each side
   */
  public double meanA(int[] times) {
    return weighted(sum(times), 1, 0) + centre;
  }

  /** The totals of all strata with each group counted so many times. */
  double[] sum(int[] times) {
    double[] sum = new double[strata * WIDTH];
    for (int group = 0; group < times.length; group++) {
      add(sum, group, times[group]);
    }
    return sum;
  }

  private void add(double[] sum, int group, int times) {
    if (times == 0) {
      return;
    }
    for (Cell cell : cells.get(group)) {
      for (int i = 0; i < WIDTH; i++) {
        sum[cell.stratum() * WIDTH + i] += times * cell.totals()[i];
      }
    }
  }

  /**
   * The difference without each group in turn, under the same rule.
   *
   * @param all the totals of all groups
   */
  double[] differencesWithoutEach(double[] all) {
    double weighted = 0;
    double weights = 0;
    for (int at = 0; at < all.length; at += WIDTH) {
      weighted += weight(all, at) * gap(all, at, 1, 1);
      weights += weight(all, at);
    }
    double[] without = new double[cells.size()];
    for (int group = 0; group < without.length; group++) {
      double sum = weighted;
      double rest = weights;
      for (Cell cell : cells.get(group)) {
        int at = cell.stratum() * WIDTH;
        double[] less = new double[WIDTH];
        for (int i = 0; i < WIDTH; i++) {
          less[i] = all[at + i] - cell.totals()[i];
        }
        sum += weight(less, 0) * gap(less, 0, 1, 1) - weight(all, at) * gap(all, at, 1, 1);
        rest += weight(less, 0) - weight(all, at);
      }
      without[group] = rest > LEAST_WEIGHT ? sum / rest : Double.NaN;
    }
    return without;
  }

  static double difference(double[] sum) {
    return weighted(sum, 1, 1);
  }

  private static double weighted(double[] sum, int timesA, int timesB) {
    double weighted = 0;
    double weights = 0;
    for (int at = 0; at < sum.length; at += WIDTH) {
      weighted += weight(sum, at) * gap(sum, at, timesA, timesB);
      weights += weight(sum, at);
    }
    return weights > 0 ? weighted / weights : Double.NaN;
  }

  /** The weight of the stratum at this place; 0 where it can't be used. */
  private static double weight(double[] sum, int at) {
    double countA = sum[at];
    double countB = sum[at + 2];
    return countA >= StratifiedDifference.FEWEST && countB >= StratifiedDifference.FEWEST
        ? StratifiedDifference.weight(countA, countB)
        : 0;
  }

  /** Mean of A less mean of B, each so many times; 0 where the stratum can't be used. */
  private static double gap(double[] sum, int at, int timesA, int timesB) {
    return weight(sum, at) > 0
        ? timesA * sum[at + 1] / sum[at] - timesB * sum[at + 3] / sum[at + 2]
        : 0;
  }
}
