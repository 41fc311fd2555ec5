package clenchbook.statistics;

import java.util.Optional;

/**
 * The two sides within one stratum.
 *
 * @param stratum its name
 * @param a the first side
 * @param b the other side
 * @param groupsA how many groups side A has here
 * @param groupsB how many groups side B has here
 * @param plain Welch's 95 % interval; empty without variance
 * @param leaveOneOut the interval by leaving out a group at a time; empty where it can't be made
 */
public record StratumEstimate(
    String stratum,
    Moments a,
    Moments b,
    int groupsA,
    int groupsB,
    Optional<Interval> plain,
    Optional<Interval> leaveOneOut) {

  /** Mean of A less mean of B. */
  public double difference() {
    return a.mean() - b.mean();
  }

  /** The stratum's weight n_a · n_b / (n_a + n_b). */
  public double weight() {
    return StratifiedDifference.weight(a.n(), b.n());
  }
}
