package clenchbook.reading.proposal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/**
 * The assignment, judged by trying everything and by the simplex method of Commons Math: the
 * corners of an assignment's linear programme are whole (G. Birkhoff, "Tres observaciones sobre el
 * algebra lineal", Univ. Nac. Tucumán Rev. A 5, 1946; from memory).
 */
class OneToOneTest {
  private static int[][] random(Random random, int rows, int columns) {
    int[][] points = new int[rows][columns];
    for (int[] row : points) {
      for (int at = 0; at < columns; at++) {
        row[at] = random.nextInt(5) == 0 ? OneToOne.NEVER : random.nextInt(81) - 30;
      }
    }
    return points;
  }

  private static int mostByTrying(int[][] points, int row, boolean[] used) {
    if (row == points.length) {
      return 0;
    }
    int most = mostByTrying(points, row + 1, used);
    for (int at = 0; at < used.length; at++) {
      if (!used[at]) {
        used[at] = true;
        most = Math.max(most, points[row][at] + mostByTrying(points, row + 1, used));
        used[at] = false;
      }
    }
    return most;
  }

  private static long mostBySimplex(int[][] points) {
    int rows = points.length;
    int columns = points[0].length;
    double[] objective = new double[rows * columns];
    List<LinearConstraint> limits = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      double[] ofRow = new double[rows * columns];
      for (int at = 0; at < columns; at++) {
        objective[row * columns + at] = Math.max(points[row][at], -100);
        ofRow[row * columns + at] = 1;
      }
      limits.add(new LinearConstraint(ofRow, Relationship.LEQ, 1));
    }
    for (int at = 0; at < columns; at++) {
      double[] ofColumn = new double[rows * columns];
      for (int row = 0; row < rows; row++) {
        ofColumn[row * columns + at] = 1;
      }
      limits.add(new LinearConstraint(ofColumn, Relationship.LEQ, 1));
    }
    double value =
        new SimplexSolver()
            .optimize(
                new LinearObjectiveFunction(objective, 0),
                new LinearConstraintSet(limits),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(true))
            .getValue();
    return Math.round(value);
  }

  private static void assertEachOnce(int[] assigned) {
    int[] given = Arrays.stream(assigned).filter(at -> at != OneToOne.NONE).toArray();
    assertEquals(given.length, Arrays.stream(given).distinct().count());
  }

  @Test
  void no_other_assignment_has_more_points() {
    Random random = new Random(17);
    for (int trial = 0; trial < 400; trial++) {
      int[][] points = random(random, 1 + random.nextInt(6), 1 + random.nextInt(6));
      int[] found = OneToOne.best(points);
      assertEachOnce(found);
      int most = mostByTrying(points, 0, new boolean[points[0].length]);
      assertEquals(most, OneToOne.total(points, found), Arrays.deepToString(points));
    }
  }

  @Test
  void the_simplex_method_finds_no_more_in_tables_as_wide_as_a_sheet() {
    Random random = new Random(4);
    for (int trial = 0; trial < 12; trial++) {
      int[][] points = random(random, 6 + random.nextInt(10), 8 + random.nextInt(16));
      assertEquals(mostBySimplex(points), OneToOne.total(points, OneToOne.best(points)));
    }
  }

  @Test
  void a_column_that_nothing_speaks_for_gets_none() {
    assertArrayEquals(new int[] {OneToOne.NONE}, OneToOne.best(new int[][] {{0 - 5, -1}}));
    assertArrayEquals(new int[0], OneToOne.best(new int[0][0]));
    assertArrayEquals(
        new int[] {0, OneToOne.NONE}, OneToOne.best(new int[][] {{30}, {20}}), "only one has it");
    assertTrue(OneToOne.best(new int[][] {{}, {}}).length == 2);
  }
}
