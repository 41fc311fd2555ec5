package clenchbook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Draws whole groups again, with replacement, and reads 95 % intervals off the middle of what comes
 * out (percentile method: Efron and Tibshirani, "An Introduction to the Bootstrap", 1993, chapter
 * 13; whole groups as the units; from memory).
 *
 * <p>The draws are the same in each run: the seed is the caller's and the generator is {@link
 * SplittableRandom}, whose sequence is fixed by its specification.
 *
 * @param groups how many groups there are; none gives no draws
 * @param times how many draws
 * @param seed where the draws start
 */
public record GroupBootstrap(int groups, int times, long seed) {

  /**
   * The middle 95 % of several estimates over the same draws.
   *
   * @param count how many estimates
   * @param estimates from how often each group was drawn; not a number where that draw gives none,
   *     positive infinity where it is beyond all bounds
   * @return one an estimate; empty where fewer than nine in ten draws give it
   */
  public List<Optional<Interval>> intervals(int count, Function<int[], double[]> estimates) {
    double[][] found = new double[count][groups > 0 ? times : 0];
    SplittableRandom random = new SplittableRandom(seed);
    int[] counts = new int[groups];
    for (int draw = 0; draw < found[0].length; draw++) {
      Arrays.fill(counts, 0);
      for (int i = 0; i < groups; i++) {
        counts[random.nextInt(groups)]++;
      }
      double[] values = estimates.apply(counts);
      for (int i = 0; i < count; i++) {
        found[i][draw] = values[i];
      }
    }
    List<Optional<Interval>> intervals = new ArrayList<>();
    for (double[] values : found) {
      intervals.add(middle(values));
    }
    return intervals;
  }

  private Optional<Interval> middle(double[] values) {
    double[] sorted =
        Arrays.stream(values).filter(value -> !Double.isNaN(value)).sorted().toArray();
    if (sorted.length == 0 || sorted.length < 0.9 * times) {
      return Optional.empty();
    }
    return Optional.of(new Interval(percentile(sorted, 0.025), percentile(sorted, 0.975)));
  }

  /** The k-th smallest with k = part · (n + 1), to the nearer whole k. */
  private static double percentile(double[] sorted, double part) {
    long rank = Math.round(part * (sorted.length + 1));
    return sorted[(int) Math.min(Math.max(rank, 1), sorted.length) - 1];
  }
}
