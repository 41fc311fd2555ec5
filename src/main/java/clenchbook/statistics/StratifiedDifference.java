package clenchbook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The difference between two sides, like compared with like.
 *
 * <p>In stratum k with at least two values on each side d_k is the difference of the means and v_k
 * = s²_a/n_a + s²_b/n_b its variance. Overall d = Σ w_k d_k / Σ w_k with w_k = n_a n_b / (n_a +
 * n_b), the weight that least squares with an effect per stratum gives. Its variance is Σ w_k² v_k
 * / (Σ w_k)², a sum of independent parts c = (w_k / Σ w)² s²/n, one for each side of each stratum
 * with n − 1 degrees of freedom; Satterthwaite's degrees of freedom are therefore (Σ c)² / Σ (c² /
 * (n − 1)) (Satterthwaite, "An Approximate Distribution of Estimates of Variance Components",
 * Biometrics Bulletin 2, 1946; with one stratum: Welch, Biometrika 34, 1947).
 */
public final class StratifiedDifference {

  /** A side with fewer values than this leaves its stratum unused. */
  public static final int FEWEST = 2;

  private StratifiedDifference() {}

  /**
   * Estimates the difference A less B. The order of the observations does not matter.
   *
   * @return empty where no stratum has two values on each side
   */
  public static Optional<StratifiedEstimate> estimate(List<Observation> observations) {
    List<List<Observation>> used = usable(observations);
    if (used.isEmpty()) {
      return Optional.empty();
    }
    List<StratumEstimate> strata = used.stream().map(StratifiedDifference::stratum).toList();
    List<Observation> all = used.stream().flatMap(List::stream).toList();
    return Optional.of(combine(strata, all));
  }

  /**
   * The difference alone, without any interval.
   *
   * @return empty where no stratum has two values on each side
   */
  public static OptionalDouble difference(List<Observation> observations) {
    GroupTotals totals = GroupTotals.of(observations);
    int[] once = new int[totals.groups()];
    Arrays.fill(once, 1);
    double difference = totals.difference(once);
    return Double.isNaN(difference) ? OptionalDouble.empty() : OptionalDouble.of(difference);
  }

  /** The weight of a stratum with these counts. */
  static double weight(double countA, double countB) {
    return countA * countB / (countA + countB);
  }

  private static List<List<Observation>> usable(List<Observation> observations) {
    Map<String, List<Observation>> byStratum = new TreeMap<>();
    for (Observation each : observations) {
      byStratum.computeIfAbsent(each.stratum(), name -> new ArrayList<>()).add(each);
    }
    return byStratum.values().stream()
        .filter(some -> count(some, Side.A) >= FEWEST && count(some, Side.B) >= FEWEST)
        .toList();
  }

  private static long count(List<Observation> observations, Side side) {
    return observations.stream().filter(each -> each.side() == side).count();
  }

  private static StratumEstimate stratum(List<Observation> within) {
    Moments a = moments(within, Side.A);
    Moments b = moments(within, Side.B);
    double partA = a.variance() / a.n();
    double partB = b.variance() / b.n();
    double df = satterthwaite(List.of(partA, partB), List.of(a.n() - 1, b.n() - 1));
    double difference = a.mean() - b.mean();
    return new StratumEstimate(
        within.get(0).stratum(),
        a,
        b,
        groups(within, Side.A),
        groups(within, Side.B),
        interval(difference, partA + partB, df),
        LeaveOneGroupOut.interval(within));
  }

  private static StratifiedEstimate combine(List<StratumEstimate> strata, List<Observation> all) {
    double total = strata.stream().mapToDouble(StratumEstimate::weight).sum();
    List<Double> parts = new ArrayList<>();
    List<Integer> freedoms = new ArrayList<>();
    double meanA = 0;
    double meanB = 0;
    for (StratumEstimate stratum : strata) {
      double share = stratum.weight() / total;
      meanA += share * stratum.a().mean();
      meanB += share * stratum.b().mean();
      for (Moments side : List.of(stratum.a(), stratum.b())) {
        parts.add(share * share * side.variance() / side.n());
        freedoms.add(side.n() - 1);
      }
    }
    double variance = parts.stream().mapToDouble(Double::doubleValue).sum();
    double df = satterthwaite(parts, freedoms);
    return new StratifiedEstimate(
        strata,
        groups(all, Side.A),
        groups(all, Side.B),
        meanA,
        meanB,
        meanA - meanB,
        variance,
        df,
        interval(meanA - meanB, variance, df),
        LeaveOneGroupOut.interval(all));
  }

  private static double satterthwaite(List<Double> parts, List<Integer> freedoms) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < parts.size(); i++) {
      sum += parts.get(i);
      squares += parts.get(i) * parts.get(i) / freedoms.get(i);
    }
    return squares > 0 ? sum * sum / squares : Double.NaN;
  }

  private static Optional<Interval> interval(double difference, double variance, double df) {
    return variance > 0 && df > 0
        ? Optional.of(StudentT.interval(difference, Math.sqrt(variance), df))
        : Optional.empty();
  }

  private static Moments moments(List<Observation> within, Side side) {
    return Moments.of(
        within.stream()
            .filter(each -> each.side() == side)
            .mapToDouble(Observation::value)
            .sorted()
            .toArray());
  }

  private static int groups(List<Observation> within, Side side) {
    TreeSet<String> names = new TreeSet<>();
    for (Observation each : within) {
      if (each.side() == side) {
        names.add(each.group());
      }
    }
    return names.size();
  }
}
