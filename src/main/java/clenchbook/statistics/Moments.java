package clenchbook.statistics;

/**
 * Count, mean and variance of a sample.
 *
 * @param n how many values
 * @param mean their mean; 0 where there is none
 * @param variance their variance with divisor n − 1; 0 below two values
 */
public record Moments(int n, double mean, double variance) {

  /** Relative spread under which values count as all alike: rounding, not variation. */
  private static final double ALIKE = 1e-12;

  /**
   * Moments by two passes, with the second pass's own rounding taken off (Chan, Golub and LeVeque,
   * "Algorithms for Computing the Sample Variance", The American Statistician 37, 1983, equation
   * 1.7). A spread that rounding alone explains is 0.
   *
   * @param values the sample; may be empty
   */
  public static Moments of(double[] values) {
    int n = values.length;
    if (n == 0) {
      return new Moments(0, 0, 0);
    }
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double mean = sum / n;
    return new Moments(n, mean, n < 2 ? 0 : variance(values, mean));
  }

  private static double variance(double[] values, double mean) {
    double squares = 0;
    double deviations = 0;
    double largest = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
      deviations += value - mean;
      largest = Math.max(largest, Math.abs(value));
    }
    double variance = (squares - deviations * deviations / values.length) / (values.length - 1);
    return variance <= ALIKE * ALIKE * largest * largest ? 0 : variance;
  }
}
