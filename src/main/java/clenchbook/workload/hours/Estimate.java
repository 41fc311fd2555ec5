package clenchbook.workload.hours;

import clenchbook.statistics.Interval;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A figure with the interval that the data allow.
 *
 * @param value the figure
 * @param interval its 95 % interval; empty where the data allow none
 */
public record Estimate(double value, Optional<Interval> interval) {

  /**
   * A figure without an interval.
   *
   * @param value the figure
   * @return the estimate
   */
  public static Estimate of(double value) {
    return new Estimate(value, Optional.empty());
  }

  /**
   * The figure and its ends changed alike.
   *
   * @param change rising or falling over the whole interval
   * @return the changed estimate, its ends in order
   */
  public Estimate map(DoubleUnaryOperator change) {
    return new Estimate(
        change.applyAsDouble(value),
        interval.map(
            ends -> {
              double one = change.applyAsDouble(ends.low());
              double other = change.applyAsDouble(ends.high());
              return new Interval(Math.min(one, other), Math.max(one, other));
            }));
  }

  /**
   * The sum of two independent figures: the reaches of their intervals add as squares.
   *
   * @param other independent of this one; one without an interval is taken as exact
   * @return the sum
   */
  public Estimate plus(Estimate other) {
    double sum = value + other.value;
    if (interval.isEmpty() && other.interval.isEmpty()) {
      return of(sum);
    }
    double below = Math.hypot(below(), other.below());
    double above = Math.hypot(above(), other.above());
    return new Estimate(sum, Optional.of(new Interval(sum - below, sum + above)));
  }

  private double below() {
    return interval.map(ends -> value - ends.low()).orElse(0.0);
  }

  private double above() {
    return interval.map(ends -> ends.high() - value).orElse(0.0);
  }
}
