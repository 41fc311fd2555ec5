package clenchbook.comparison.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * Draws whole groups again, with replacement, and reads 95 % intervals off the middle of what comes
 * out (percentile method: Efron and Tibshirani, "An Introduction to the Bootstrap", 1993, chapter
 * 13; whole groups as the units; from memory).
 *
 * <p>The draws are the same in each run: the seed is the caller's and the generator is {@link
 * SplittableRandom}, whose sequence is fixed by its specification.
 */
public final class GroupBootstrap {

  private final List<int[]> draws;

  private GroupBootstrap(List<int[]> draws) {
    this.draws = draws;
  }

  /**
   * Draws {@code times} times from {@code groups} groups.
   *
   * @param groups how many groups there are; none gives no draws
   */
  public static GroupBootstrap of(int groups, int times, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<int[]> draws = new ArrayList<>();
    for (int draw = 0; draw < times && groups > 0; draw++) {
      int[] counts = new int[groups];
      for (int i = 0; i < groups; i++) {
        counts[random.nextInt(groups)]++;
      }
      draws.add(counts);
    }
    return new GroupBootstrap(draws);
  }

  /**
   * The middle 95 % of an estimate over the draws.
   *
   * @param estimate from how often each group was drawn; not a number where that draw gives none,
   *     positive infinity where it is beyond all bounds
   * @return empty where fewer than nine in ten draws give an estimate
   */
  public Optional<Interval> interval(ToDoubleFunction<int[]> estimate) {
    double[] found =
        draws.stream()
            .mapToDouble(estimate)
            .filter(value -> !Double.isNaN(value))
            .sorted()
            .toArray();
    if (found.length == 0 || found.length < 0.9 * draws.size()) {
      return Optional.empty();
    }
    return Optional.of(new Interval(percentile(found, 0.025), percentile(found, 0.975)));
  }

  /** The k-th smallest with k = part · (n + 1), to the nearer whole k. */
  private static double percentile(double[] sorted, double part) {
    long rank = Math.round(part * (sorted.length + 1));
    return sorted[(int) Math.min(Math.max(rank, 1), sorted.length) - 1];
  }

  /** How many draws there are. */
  public int size() {
    return draws.size();
  }

  /** The counts of one draw, a copy. */
  int[] draw(int number) {
    return Arrays.copyOf(draws.get(number), draws.get(number).length);
  }
}
