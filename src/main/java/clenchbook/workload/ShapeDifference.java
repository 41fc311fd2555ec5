package clenchbook.workload;

import java.util.OptionalDouble;

/**
 * What hot shaping takes more or less than cold, from the comparisons, like with like.
 *
 * @param minutesPerShoe hot less cold, minutes a shoe; negative where hot is quicker
 * @param low lower end of its 95 % interval; empty where there is none
 * @param high upper end; empty where there is none
 * @param verdict what the comparison says of it, in its own words
 */
public record ShapeDifference(
    double minutesPerShoe, OptionalDouble low, OptionalDouble high, String verdict) {

  /** The lower end, or the value itself where there is no interval. */
  double lowest() {
    return low.orElse(minutesPerShoe);
  }

  /** The upper end, or the value itself where there is no interval. */
  double highest() {
    return high.orElse(minutesPerShoe);
  }

  /** Whether there is an interval. */
  boolean hasInterval() {
    return low.isPresent() && high.isPresent();
  }
}
