package clenchbook.statistics;

import java.util.Optional;

/**
 * A range of values, both ends inclusive.
 *
 * @param low the lower end
 * @param high the upper end, at or above the lower; may be positive infinity
 */
public record Interval(double low, double high) {

  /** Refuses ends in the wrong order and ends that are no numbers. */
  public Interval {
    if (Double.isNaN(low) || Double.isNaN(high) || low > high) {
      throw new IllegalArgumentException("no interval from " + low + " to " + high);
    }
  }

  /** The interval that reaches {@code reach} to either side of {@code centre}. */
  public static Interval around(double centre, double reach) {
    return new Interval(centre - reach, centre + reach);
  }

  /** The upper end less the lower. */
  public double width() {
    return high - low;
  }

  /** Whether {@code value} lies inside, ends included. */
  public boolean holds(double value) {
    return low <= value && value <= high;
  }

  /** Whether the two share at least one value. */
  public boolean meets(Interval other) {
    return low <= other.high && other.low <= high;
  }

  /**
   * The wider of two intervals, the first where they are equally wide; the one that exists where
   * only one does; empty where neither does.
   */
  public static Optional<Interval> wider(Optional<Interval> first, Optional<Interval> second) {
    if (first.isEmpty() || second.isEmpty()) {
      return first.or(() -> second);
    }
    return second.get().width() > first.get().width() ? second : first;
  }
}
