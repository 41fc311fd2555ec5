package clenchbook.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Finds a plan with the fewest bars, and proves it or says how far off it may be.
 *
 * <p>The search stops after a fixed amount of work, not of time, so the same order gives the same
 * plan on every machine. Within that work the answer is exact: a plan is found with as many bars as
 * the lower bound, or all plans with fewer bars are ruled out one target after the other.
 */
public final class CuttingSolver {

  /** Knapsack cells the whole search may fill: about a second on a small machine. */
  private static final long WORK = 600_000_000L;

  private CuttingSolver() {}

  /** Gives the best plan found for the order; an empty order needs no bar. */
  public static CuttingPlan solve(CuttingOrder order) {
    if (order.pieces().isEmpty()) {
      return new CuttingPlan(order, List.of(), 0);
    }
    Sizes sizes = Sizes.of(order);
    Work work = new Work(WORK);
    List<int[]> best = FirstFit.decreasing(sizes, order.demand());
    Relaxation root = Relaxation.of(sizes, order.demand(), work);
    int target = root.lowerBound();
    while (target < best.size()) {
      PlanSearch search = new PlanSearch(sizes, work);
      Optional<List<int[]>> found = withFewBars(search, root, order.demand(), target);
      if (found.isPresent()) {
        return plan(order, found.get(), target);
      }
      if (work.spent()) {
        return plan(order, improve(sizes, root, order.demand(), best, target), target);
      }
      target++;
    }
    return plan(order, best, target);
  }

  /**
   * Looks for a plan of so many bars: first keeping what the relaxation uses in whole bars and
   * searching only the rest, then keeping one bar less of each, at last keeping nothing. Only the
   * last can rule the target out.
   */
  private static Optional<List<int[]>> withFewBars(
      PlanSearch search, Relaxation root, int[] demand, int target) {
    for (int less = 0; less <= 1; less++) {
      Optional<List<int[]>> found = search.complete(root.wholeBars(less), demand, target);
      if (found.isPresent()) {
        return found;
      }
    }
    return search.complete(List.of(), demand, target);
  }

  /** The work is spent: takes the fewest bars above the target that a quick look still finds. */
  private static List<int[]> improve(
      Sizes sizes, Relaxation root, int[] demand, List<int[]> best, int target) {
    for (int bars = target + 1; bars < best.size(); bars++) {
      PlanSearch quick = new PlanSearch(sizes, new Work(WORK / 10));
      Optional<List<int[]>> found = quick.complete(root.wholeBars(0), demand, bars);
      if (found.isPresent()) {
        return found.get();
      }
    }
    return best;
  }

  private static CuttingPlan plan(CuttingOrder order, List<int[]> bars, int atLeast) {
    Map<List<Integer>, Integer> tally = new TreeMap<>(CuttingSolver::compareCounts);
    for (int[] bar : bars) {
      tally.merge(Arrays.stream(bar).boxed().toList(), 1, Integer::sum);
    }
    List<CuttingPlan.Pattern> patterns = new ArrayList<>();
    tally.forEach((counts, n) -> patterns.add(pattern(order, counts, n)));
    patterns.sort(Comparator.comparingInt(CuttingPlan.Pattern::bars).reversed());
    return new CuttingPlan(order, patterns, atLeast);
  }

  private static CuttingPlan.Pattern pattern(CuttingOrder order, List<Integer> counts, int bars) {
    long left = order.capacity();
    long[] sizes = order.sizes();
    for (int i = 0; i < sizes.length; i++) {
      left -= counts.get(i) * sizes[i];
    }
    return new CuttingPlan.Pattern(bars, counts, Math.max(0, left - order.kerf()));
  }

  /** More of the longest piece comes first. */
  private static int compareCounts(List<Integer> a, List<Integer> b) {
    return Arrays.compare(
        b.stream().mapToInt(Integer::intValue).toArray(),
        a.stream().mapToInt(Integer::intValue).toArray());
  }
}
