package clenchbook.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * An interval that allows for values of one group being alike: each group is left out once.
 *
 * <p>With G groups and K strata, θ the full estimate and θᵢ the estimate without group i, the
 * variance is (G − 1)/G · Σ (θᵢ − mean θᵢ)² and the 95 % interval θ ∓ t(0.975; G − 2K) · √V (Efron
 * and Tibshirani, "An Introduction to the Bootstrap", 1993, section 11.5, with whole groups as the
 * units; from memory). The degrees of freedom count two means a stratum as estimated.
 */
public final class LeaveOneGroupOut {

  private LeaveOneGroupOut() {}

  /**
   * The interval for the weighted mean difference of {@link StratifiedDifference}.
   *
   * @param used observations of strata with two values on each side, and no others
   * @return empty where G − 2K is below 1, where leaving out a group leaves no usable stratum, and
   *     without variation
   */
  static Optional<Interval> interval(List<Observation> used) {
    GroupTotals totals = GroupTotals.of(used);
    int[] once = new int[totals.groups()];
    Arrays.fill(once, 1);
    double[] all = totals.sum(once);
    double[] without = totals.differencesWithoutEach(all);
    double largest = used.stream().mapToDouble(each -> Math.abs(each.value())).max().orElse(0);
    return interval(GroupTotals.difference(all), without, totals.strata(), largest);
  }

  /**
   * The interval from estimates that are already made.
   *
   * @param full the estimate from all groups
   * @param without one estimate for each group, made without it; not a number where it can't be
   * @param strata how many strata the full estimate uses
   * @param scale the size of the values, against which rounding is told from variation
   * @return empty where it can't be made
   */
  public static Optional<Interval> interval(
      double full, double[] without, int strata, double scale) {
    int groups = without.length;
    int freedom = groups - 2 * strata;
    if (freedom < 1 || !Arrays.stream(without).allMatch(Double::isFinite)) {
      return Optional.empty();
    }
    double mean = Arrays.stream(without).sum() / groups;
    double squares = Arrays.stream(without).map(each -> (each - mean) * (each - mean)).sum();
    double variance = squares * (groups - 1) / groups;
    double rounding = 1e-12 * scale;
    return variance <= rounding * rounding
        ? Optional.empty()
        : Optional.of(StudentT.interval(full, Math.sqrt(variance), freedom));
  }
}
