package clenchbook.workload.strain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The sum by which both indices above the task are made: parts in falling order of their own index,
 * each of which adds what its span adds to the multiplier of the spans before it.
 */
final class StackedEfforts {
  private StackedEfforts() {}

  /**
   * One part.
   *
   * @param alone its own index, by which it is put in order
   * @param span its efforts a minute, or its hours
   * @param weight its index without the multiplier of its span
   */
  record Part(double alone, double span, double weight) {}

  /** The sum; the first part carries its whole multiplier, since that of nothing is 0.10. */
  static double sum(List<Part> parts, DoubleUnaryOperator multiplier) {
    List<Part> falling = new ArrayList<>(parts);
    falling.sort(Comparator.comparingDouble(part -> -part.alone()));
    double index = 0;
    double before = 0;
    for (Part part : falling) {
      double after = before + part.span();
      double added =
          multiplier.applyAsDouble(after) - (before == 0 ? 0 : multiplier.applyAsDouble(before));
      index += part.weight() * added;
      before = after;
    }
    return index;
  }
}
