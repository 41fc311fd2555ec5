package clenchbook.stock.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order cut with fractions of bars allowed, by column generation.
 *
 * <p>The basis is kept in floating point: it only proposes patterns and prices. The lower bound is
 * exact: the prices are cut down to whole billionths, the most valuable bar under them is found in
 * integers, and demand at those prices divided by that bar's value, rounded up, is a number of bars
 * no plan can go below.
 */
final class Relaxation {

  private static final long SCALE = 1_000_000_000L;
  private static final long TOLERANCE = SCALE / 1_000_000;
  private static final double TINY = 1e-9;
  private static final int MOST_PIVOTS = 2_000;

  private final Sizes sizes;
  private final int[] demand;
  private final int[] kinds;
  private final int[][] basis;
  private final double[][] inverse;
  private double[] use;
  private int lowerBound;

  private Relaxation(Sizes sizes, int[] demand) {
    this.sizes = sizes;
    this.demand = demand;
    this.kinds = wanted(demand);
    this.basis = new int[kinds.length][];
    this.inverse = new double[kinds.length][kinds.length];
    this.use = new double[kinds.length];
    startWithOneLengthEach();
  }

  /** Solves the relaxation for this demand, at least one of which is above zero. */
  static Relaxation of(Sizes sizes, int[] demand, Work work) {
    Relaxation relaxation = new Relaxation(sizes, demand);
    relaxation.improve(new Knapsack(sizes), work);
    return relaxation;
  }

  /** Gives the proved least number of bars. */
  int lowerBound() {
    return lowerBound;
  }

  /** Gives the bars that stand whole in the relaxation, each pattern that many fewer. */
  List<int[]> wholeBars(int fewer) {
    List<int[]> bars = new ArrayList<>();
    int[] left = demand.clone();
    for (int row = 0; row < basis.length; row++) {
      int whole = (int) Math.floor(use[row] + TINY) - fewer;
      for (int n = 0; n < whole && fits(basis[row], left); n++) {
        bars.add(basis[row]);
        left = Sizes.less(left, basis[row]);
      }
    }
    return bars;
  }

  /** Gives the patterns in use, the most used first. */
  List<int[]> patternsByUse() {
    return IntStream.range(0, basis.length)
        .filter(row -> use[row] > TINY)
        .boxed()
        .sorted((a, b) -> Double.compare(use[b], use[a]))
        .map(row -> basis[row])
        .toList();
  }

  static boolean fits(int[] pattern, int[] demand) {
    for (int i = 0; i < demand.length; i++) {
      if (pattern[i] > demand[i]) {
        return false;
      }
    }
    return true;
  }

  private static int[] wanted(int[] demand) {
    return IntStream.range(0, demand.length).filter(kind -> demand[kind] > 0).toArray();
  }

  private void startWithOneLengthEach() {
    for (int row = 0; row < kinds.length; row++) {
      int kind = kinds[row];
      int most = (int) Math.min(demand[kind], sizes.capacity() / sizes.sizes()[kind]);
      basis[row] = new int[sizes.kinds()];
      basis[row][kind] = most;
      inverse[row][row] = 1.0 / most;
      use[row] = demand[kind] / (double) most;
    }
  }

  private void improve(Knapsack knapsack, Work work) {
    for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
      long[] prices = prices();
      Knapsack.Best best = knapsack.best(prices, demand, work);
      lowerBound = Math.max(lowerBound, bound(prices, best.value()));
      if (best.value() <= SCALE + TOLERANCE || work.spent()) {
        return;
      }
      enter(best.counts());
    }
  }

  /** Each piece's price in billionths of a bar, rounded down and never negative. */
  private long[] prices() {
    long[] prices = new long[sizes.kinds()];
    for (int column = 0; column < kinds.length; column++) {
      double price = 0;
      for (double[] row : inverse) {
        price += row[column];
      }
      prices[kinds[column]] = Math.max(0, (long) Math.floor(price * SCALE));
    }
    return prices;
  }

  private int bound(long[] prices, long mostOnOneBar) {
    if (mostOnOneBar == 0) {
      return 1;
    }
    BigInteger worth = BigInteger.ZERO;
    for (int kind : kinds) {
      worth =
          worth.add(BigInteger.valueOf(prices[kind]).multiply(BigInteger.valueOf(demand[kind])));
    }
    BigInteger bar = BigInteger.valueOf(mostOnOneBar);
    return worth.add(bar).subtract(BigInteger.ONE).divide(bar).intValueExact();
  }

  private void enter(int[] pattern) {
    double[] column = new double[kinds.length];
    for (int row = 0; row < kinds.length; row++) {
      for (int k = 0; k < kinds.length; k++) {
        column[row] += inverse[row][k] * pattern[kinds[k]];
      }
    }
    int leaving = leaving(column);
    basis[leaving] = pattern;
    eliminate(leaving, column);
    use = Arrays.stream(inverse).mapToDouble(this::timesDemand).toArray();
  }

  private int leaving(double[] column) {
    int leaving = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int row = 0; row < column.length; row++) {
      double ratio = column[row] > TINY ? Math.max(0, use[row]) / column[row] : least;
      if (ratio < least) {
        least = ratio;
        leaving = row;
      }
    }
    if (leaving < 0) {
      throw new IllegalStateException("a pattern that can be used without end");
    }
    return leaving;
  }

  private void eliminate(int leaving, double[] column) {
    for (int k = 0; k < kinds.length; k++) {
      inverse[leaving][k] /= column[leaving];
    }
    for (int row = 0; row < kinds.length; row++) {
      if (row != leaving) {
        for (int k = 0; k < kinds.length; k++) {
          inverse[row][k] -= column[row] * inverse[leaving][k];
        }
      }
    }
  }

  private double timesDemand(double[] row) {
    double sum = 0;
    for (int k = 0; k < kinds.length; k++) {
      sum += row[k] * demand[kinds[k]];
    }
    return sum;
  }
}
