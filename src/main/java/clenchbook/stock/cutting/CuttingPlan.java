package clenchbook.stock.cutting;

import java.util.List;

/**
 * A way to cut an order, and how sure it is that none needs fewer bars.
 *
 * @param order what is cut
 * @param patterns the different ways a bar is cut, most bars first, then by their counts
 * @param atLeast the proved lower bound: no plan can do with fewer bars
 */
public record CuttingPlan(CuttingOrder order, List<Pattern> patterns, int atLeast) {

  /**
   * One way to cut a bar.
   *
   * @param bars how many bars are cut this way, above zero
   * @param counts how many of each piece, in the order's order
   * @param offcut what is left behind the last cut, in the order's units
   */
  public record Pattern(int bars, List<Integer> counts, long offcut) {
    /** Copies the counts. */
    public Pattern {
      counts = List.copyOf(counts);
    }
  }

  /** Copies the patterns. */
  public CuttingPlan {
    patterns = List.copyOf(patterns);
  }

  /** Gives the number of bars the plan cuts. */
  public int bars() {
    return patterns.stream().mapToInt(Pattern::bars).sum();
  }

  /** Says whether it is proved that no plan needs fewer bars. */
  public boolean optimal() {
    return bars() == atLeast;
  }

  /** Gives how many bars a better plan might still save; zero where the plan is proved optimal. */
  public int gap() {
    return bars() - atLeast;
  }

  /** Gives what is neither piece nor offcut nor wanted: all bar length less all piece lengths. */
  public long waste() {
    return bars() * order.barLength() - order.totalLength();
  }
}
