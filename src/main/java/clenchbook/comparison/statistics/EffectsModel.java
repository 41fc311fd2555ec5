package clenchbook.comparison.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The difference between two sides from one least-squares model: an effect for each group, an
 * effect for each stratum, and one for side A.
 *
 * <p>The groups' effects are taken out first by taking each group's means off (Frisch and Waugh,
 * Econometrica 1, 1933), which costs one degree of freedom a group. Only groups seen on both sides,
 * or tied to others through strata, say anything about the sides.
 */
public final class EffectsModel {

  /** What is left of the side's column, against its size, when nothing tells the sides apart. */
  private static final double NOTHING_LEFT = 1e-9;

  private EffectsModel() {}

  /**
   * What the model says.
   *
   * @param difference side A less side B, all else equal
   * @param interval its 95 % interval; empty without degrees of freedom or without variation
   * @param groupsOnBothSides how many groups were seen on both sides
   */
  public record Answer(double difference, Optional<Interval> interval, int groupsOnBothSides) {}

  /**
   * Fits the model. The order of the observations does not matter beyond rounding.
   *
   * @return empty where the effects of groups and strata leave nothing to tell the sides apart
   */
  public static Optional<Answer> fit(List<Observation> observations) {
    Map<String, List<Integer>> byGroup = new TreeMap<>();
    for (int i = 0; i < observations.size(); i++) {
      byGroup.computeIfAbsent(observations.get(i).group(), name -> new ArrayList<>()).add(i);
    }
    double[] side = within(observations.stream().mapToDouble(EffectsModel::onA).toArray(), byGroup);
    if (largest(side) <= NOTHING_LEFT) {
      return Optional.empty();
    }
    double[] y = within(observations.stream().mapToDouble(Observation::value).toArray(), byGroup);
    List<double[]> columns = new ArrayList<>(strata(observations, byGroup));
    columns.add(side);
    LeastSquares.Fit fit = LeastSquares.fit(columns, y, byGroup.size());
    double scale =
        observations.stream().mapToDouble(each -> Math.abs(each.value())).max().orElse(0);
    int last = columns.size() - 1;
    OptionalDouble difference = fit.coefficients().get(last);
    return difference.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Answer(
                difference.getAsDouble(),
                interval(difference.getAsDouble(), fit, last, scale),
                both(observations, byGroup)));
  }

  private static Optional<Interval> interval(
      double difference, LeastSquares.Fit fit, int last, double scale) {
    OptionalDouble error = fit.errors().get(last);
    return error.isEmpty() || error.getAsDouble() <= 1e-12 * scale
        ? Optional.empty()
        : Optional.of(StudentT.interval(difference, error.getAsDouble(), fit.degreesOfFreedom()));
  }

  private static List<double[]> strata(
      List<Observation> observations, Map<String, List<Integer>> byGroup) {
    TreeSet<String> names = new TreeSet<>(observations.stream().map(Observation::stratum).toList());
    return names.stream()
        .skip(1)
        .map(
            name ->
                observations.stream()
                    .mapToDouble(each -> each.stratum().equals(name) ? 1 : 0)
                    .toArray())
        .map(column -> within(column, byGroup))
        .filter(column -> largest(column) > NOTHING_LEFT)
        .toList();
  }

  private static double onA(Observation observation) {
    return observation.side() == Side.A ? 1 : 0;
  }

  private static double[] within(double[] values, Map<String, List<Integer>> byGroup) {
    double[] within = new double[values.length];
    for (List<Integer> rows : byGroup.values()) {
      double sum = 0;
      for (int row : rows) {
        sum += values[row];
      }
      for (int row : rows) {
        within[row] = values[row] - sum / rows.size();
      }
    }
    return within;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  private static int both(List<Observation> observations, Map<String, List<Integer>> byGroup) {
    int both = 0;
    for (List<Integer> rows : byGroup.values()) {
      long onA = rows.stream().filter(row -> observations.get(row).side() == Side.A).count();
      both += onA > 0 && onA < rows.size() ? 1 : 0;
    }
    return both;
  }
}
