package clenchbook.reading.proposal;

import java.util.Arrays;

/**
 * Which columns get which meanings, each meaning once, so that the points add to the most. A column
 * may also get none, for no points.
 *
 * <p>The Hungarian method with potentials, in time of rows by columns squared: H. W. Kuhn, "The
 * Hungarian Method for the Assignment Problem", Naval Research Logistics Quarterly 2 (1955); the
 * shortest augmenting paths after J. Munkres (1957), from memory. No library aboard has it; see
 * docs/libraries.md.
 */
final class OneToOne {
  /** A column without meaning. */
  static final int NONE = -1;

  /** The points of a pair that can't be. */
  static final int NEVER = -1_000_000;

  private OneToOne() {}

  /**
   * Finds the best assignment.
   *
   * @param points for each column its points for each meaning; any number of both
   * @return for each column its meaning, or {@link #NONE}; of several assignments that are equally
   *     good always the same one
   */
  static int[] best(int[][] points) {
    int rows = points.length;
    int meanings = rows == 0 ? 0 : points[0].length;
    int[][] cost = new int[rows][meanings + rows];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < meanings; column++) {
        cost[row][column] = Math.max(0, -points[row][column]) - Math.max(0, points[row][column]);
      }
      // Behind the meanings stand as many places for columns without one.
      Arrays.fill(cost[row], meanings, meanings + rows, 0);
    }
    int[] found = settled(cost, meanings + rows);
    for (int row = 0; row < rows; row++) {
      found[row] = found[row] < meanings ? found[row] : NONE;
    }
    return found;
  }

  /** The points of an assignment. */
  static int total(int[][] points, int[] assigned) {
    int total = 0;
    for (int row = 0; row < assigned.length; row++) {
      total += assigned[row] == NONE ? 0 : points[row][assigned[row]];
    }
    return total;
  }

  /** The cheapest assignment of each row to a column; rows are no more than columns. */
  private static int[] settled(int[][] cost, int width) {
    int rows = cost.length;
    int[] rowPotential = new int[rows + 1];
    int[] potential = new int[width + 1];
    int[] rowOf = new int[width + 1];
    for (int row = 1; row <= rows; row++) {
      augment(cost, row, rowPotential, potential, rowOf);
    }
    int[] found = new int[rows];
    for (int column = 1; column <= width; column++) {
      if (rowOf[column] > 0) {
        found[rowOf[column] - 1] = column - 1;
      }
    }
    return found;
  }

  /** Brings one more row in, along the cheapest path of changes. */
  private static void augment(
      int[][] cost, int row, int[] rowPotential, int[] potential, int[] rowOf) {
    int width = potential.length - 1;
    int[] least = new int[width + 1];
    Arrays.fill(least, Integer.MAX_VALUE / 2);
    int[] before = new int[width + 1];
    boolean[] used = new boolean[width + 1];
    rowOf[0] = row;
    int column = 0;
    while (rowOf[column] != 0) {
      used[column] = true;
      int next = nearest(cost, column, least, before, used, rowPotential, potential, rowOf);
      int step = least[next];
      for (int each = 0; each <= width; each++) {
        if (used[each]) {
          rowPotential[rowOf[each]] += step;
          potential[each] -= step;
        } else {
          least[each] -= step;
        }
      }
      column = next;
    }
    while (column != 0) {
      rowOf[column] = rowOf[before[column]];
      column = before[column];
    }
  }

  private static int nearest(
      int[][] cost,
      int column,
      int[] least,
      int[] before,
      boolean[] used,
      int[] rowPotential,
      int[] potential,
      int[] rowOf) {
    int row = rowOf[column];
    int next = 0;
    for (int each = 1; each < potential.length; each++) {
      if (!used[each]) {
        int reduced = cost[row - 1][each - 1] - rowPotential[row] - potential[each];
        if (reduced < least[each]) {
          least[each] = reduced;
          before[each] = column;
        }
        if (next == 0 || least[each] < least[next]) {
          next = each;
        }
      }
    }
    return next;
  }
}
