package clenchbook.statistics;

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
 * <p>Values of one group, stratum and side are alike to the model, so they are first summed up to
 * their mean, which changes neither the answer nor its error. The groups' effects are then taken
 * out by taking each group's means off (Frisch and Waugh, Econometrica 1, 1933), which costs one
 * degree of freedom a group. Only groups seen on both sides, or tied to others through strata, say
 * anything about the sides.
 */
public final class EffectsModel {

  /** What is left of a column, against its size, when the groups explain it. */
  private static final double NOTHING_LEFT = 1e-9;

  /** Values in the model's columns beyond which it is not tried; 8 bytes each, twice. */
  private static final long MOST_VALUES = 10_000_000;

  private final List<Cell> cells;
  private final Map<String, List<Integer>> byGroup = new TreeMap<>();

  private EffectsModel(List<Cell> cells) {
    this.cells = cells;
    for (int i = 0; i < cells.size(); i++) {
      byGroup.computeIfAbsent(cells.get(i).group(), name -> new ArrayList<>()).add(i);
    }
  }

  /**
   * What the model says.
   *
   * @param difference side A less side B, all else equal
   * @param interval its 95 % interval; empty without degrees of freedom or without variation
   * @param groupsOnBothSides how many groups were seen on both sides
   */
  public record Answer(double difference, Optional<Interval> interval, int groupsOnBothSides) {}

  /** All values of one group, stratum and side. */
  private record Cell(String group, String stratum, Side side, Moments moments) {
    double onA() {
      return side == Side.A ? 1 : 0;
    }
  }

  /**
   * Fits the model. The order of the observations does not matter.
   *
   * @return empty where the effects of groups and strata leave nothing to tell the sides apart, and
   *     for more data than a machine holds
   */
  public static Optional<Answer> fit(List<Observation> observations) {
    EffectsModel model = new EffectsModel(cells(observations));
    double[] side = model.within(model.cells.stream().mapToDouble(Cell::onA).toArray());
    if (largest(side) <= NOTHING_LEFT) {
      return Optional.empty();
    }
    TreeSet<String> strata = new TreeSet<>(model.cells.stream().map(Cell::stratum).toList());
    if ((long) strata.size() * model.cells.size() > MOST_VALUES) {
      return Optional.empty();
    }
    double scale =
        observations.stream().mapToDouble(each -> Math.abs(each.value())).max().orElse(0);
    return model.answer(strata, side, observations.size(), scale);
  }

  private static List<Cell> cells(List<Observation> observations) {
    Map<String, Map<String, Map<Side, List<Double>>>> sorted = new TreeMap<>();
    for (Observation each : observations) {
      sorted
          .computeIfAbsent(each.group(), name -> new TreeMap<>())
          .computeIfAbsent(each.stratum(), name -> new TreeMap<>())
          .computeIfAbsent(each.side(), name -> new ArrayList<>())
          .add(each.value());
    }
    List<Cell> cells = new ArrayList<>();
    sorted.forEach(
        (group, strata) ->
            strata.forEach(
                (stratum, sides) ->
                    sides.forEach(
                        (side, values) ->
                            cells.add(new Cell(group, stratum, side, moments(values))))));
    return cells;
  }

  private static Moments moments(List<Double> values) {
    return Moments.of(values.stream().mapToDouble(Double::doubleValue).sorted().toArray());
  }

  private Optional<Answer> answer(TreeSet<String> strata, double[] side, int values, double scale) {
    List<double[]> columns = new ArrayList<>(columns(strata));
    columns.add(side);
    double[] y = within(cells.stream().mapToDouble(cell -> cell.moments().mean()).toArray());
    double inside =
        cells.stream()
            .mapToDouble(cell -> cell.moments().variance() * (cell.moments().n() - 1))
            .sum();
    LeastSquares.Fit fit = LeastSquares.fit(columns, y, values - byGroup.size(), inside);
    OptionalDouble difference = fit.coefficients().get(columns.size() - 1);
    OptionalDouble error = fit.errors().get(columns.size() - 1);
    if (difference.isEmpty()) {
      return Optional.empty();
    }
    Optional<Interval> interval =
        error.isEmpty() || error.getAsDouble() <= 1e-12 * scale
            ? Optional.empty()
            : Optional.of(
                StudentT.interval(
                    difference.getAsDouble(), error.getAsDouble(), fit.degreesOfFreedom()));
    return Optional.of(new Answer(difference.getAsDouble(), interval, onBothSides()));
  }

  /** One column a stratum, but for the first; columns that the groups explain are left out. */
  private List<double[]> columns(TreeSet<String> strata) {
    return strata.stream()
        .skip(1)
        .map(
            name ->
                cells.stream().mapToDouble(cell -> cell.stratum().equals(name) ? 1 : 0).toArray())
        .map(this::within)
        .filter(column -> largest(column) > NOTHING_LEFT)
        .toList();
  }

  /** Takes each group's mean off, and gives each cell the weight of its values. */
  private double[] within(double[] means) {
    double[] within = new double[means.length];
    for (List<Integer> rows : byGroup.values()) {
      double sum = 0;
      double count = 0;
      for (int row : rows) {
        sum += means[row] * cells.get(row).moments().n();
        count += cells.get(row).moments().n();
      }
      for (int row : rows) {
        within[row] = (means[row] - sum / count) * Math.sqrt(cells.get(row).moments().n());
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

  private int onBothSides() {
    int both = 0;
    for (List<Integer> rows : byGroup.values()) {
      long sides = rows.stream().map(row -> cells.get(row).side()).distinct().count();
      both += sides > 1 ? 1 : 0;
    }
    return both;
  }
}
