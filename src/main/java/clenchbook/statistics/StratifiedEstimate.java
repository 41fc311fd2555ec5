package clenchbook.statistics;

import java.util.List;
import java.util.Optional;

/**
 * The difference between two sides over all strata that can be used.
 *
 * @param strata the strata used, in order of their names; never empty
 * @param groupsA how many groups side A has in them
 * @param groupsB how many groups side B has in them
 * @param meanA the weighted mean of side A's stratum means
 * @param meanB the same of side B
 * @param difference the weighted mean difference, A less B
 * @param variance its variance, from the variation within each side of each stratum
 * @param degreesOfFreedom Satterthwaite's; not a number without variance
 * @param plain the 95 % interval from the two numbers before; empty without variance
 * @param leaveOneOut the 95 % interval by leaving out a group at a time; empty where it can't be
 *     made
 */
public record StratifiedEstimate(
    List<StratumEstimate> strata,
    int groupsA,
    int groupsB,
    double meanA,
    double meanB,
    double difference,
    double variance,
    double degreesOfFreedom,
    Optional<Interval> plain,
    Optional<Interval> leaveOneOut) {

  /** Copies the list; refuses an empty one. */
  public StratifiedEstimate {
    strata = List.copyOf(strata);
    if (strata.isEmpty()) {
      throw new IllegalArgumentException("an estimate needs a stratum");
    }
  }

  /** How many values of side A the strata hold. */
  public int countA() {
    return strata.stream().mapToInt(stratum -> stratum.a().n()).sum();
  }

  /** How many values of side B the strata hold. */
  public int countB() {
    return strata.stream().mapToInt(stratum -> stratum.b().n()).sum();
  }

  /** The wider of the two intervals, or the only one, or none. */
  public Optional<Interval> wider() {
    return Interval.wider(plain, leaveOneOut);
  }
}
