package clenchbook.statistics;

/**
 * A share of a whole with Wilson's score interval, and the difference of two.
 *
 * @param part how much has the property; need not be whole, at most {@code whole}
 * @param whole how much was looked at; above 0
 */
public record Proportion(double part, double whole) {

  /** The 0.975 quantile of the standard normal distribution. */
  private static final double Z = 1.959963984540054;

  /** Refuses a part outside the whole and an empty whole. */
  public Proportion {
    if (!(whole > 0 && part >= 0 && part <= whole)) {
      throw new IllegalArgumentException(part + " of " + whole + " is no share");
    }
  }

  /** The share, 0 to 1. */
  public double share() {
    return part / whole;
  }

  /**
   * Wilson's 95 % score interval without continuity correction (Newcombe, "Two-sided confidence
   * intervals for the single proportion", Statistics in Medicine 17:857-872, 1998, method 3).
   */
  public Interval wilson() {
    double p = share();
    double centre = p + Z * Z / (2 * whole);
    double reach = Z * Math.sqrt(p * (1 - p) / whole + Z * Z / (4 * whole * whole));
    double scale = 1 + Z * Z / whole;
    double low = part == 0 ? 0 : Math.max(0, (centre - reach) / scale);
    double high = part == whole ? 1 : Math.min(1, (centre + reach) / scale);
    return new Interval(low, high);
  }

  /**
   * The 95 % interval of this share less another, from the two score intervals (Newcombe, "Interval
   * estimation for the difference between independent proportions", Statistics in Medicine
   * 17:873-890, 1998, method 10).
   */
  public Interval differenceFrom(Proportion other) {
    Interval own = wilson();
    Interval its = other.wilson();
    double difference = share() - other.share();
    double down = Math.hypot(share() - own.low(), its.high() - other.share());
    double up = Math.hypot(own.high() - share(), other.share() - its.low());
    return new Interval(difference - down, difference + up);
  }
}
