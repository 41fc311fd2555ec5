package clenchbook.statistics;

import org.apache.commons.statistics.distribution.TDistribution;

/** Student's t as far as two-sided 95 % intervals need it. */
public final class StudentT {

  private static final double UPPER = 0.975;

  private StudentT() {}

  /**
   * The 0.975 quantile: 95 % of the distribution lies within this many standard errors.
   *
   * @param degreesOfFreedom above 0, need not be whole
   * @throws IllegalArgumentException at or below 0
   */
  public static double quantile(double degreesOfFreedom) {
    return TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(UPPER);
  }

  /** The 95 % interval around {@code estimate} with this standard error. */
  public static Interval interval(double estimate, double error, double degreesOfFreedom) {
    return Interval.around(estimate, quantile(degreesOfFreedom) * error);
  }
}
