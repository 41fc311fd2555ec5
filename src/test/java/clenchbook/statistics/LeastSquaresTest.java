package clenchbook.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {

  private static double[] ones(int rows) {
    double[] ones = new double[rows];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static void assertRelative(double expected, double actual, double tolerance) {
    assertEquals(expected, actual, Math.abs(expected) * tolerance);
  }

  /** NIST StRD, linear regression, Norris: certified values. */
  @Test
  void norris_is_fitted_as_certified() {
    double[] y = PublishedSamples.NORRIS_Y;
    LeastSquares.Fit fit = LeastSquares.fit(List.of(ones(y.length), PublishedSamples.NORRIS_X), y);
    assertRelative(-0.262323073774029, fit.coefficients().get(0).getAsDouble(), 1e-10);
    assertRelative(1.00211681802045, fit.coefficients().get(1).getAsDouble(), 1e-10);
    assertRelative(0.232818234301152, fit.errors().get(0).getAsDouble(), 1e-10);
    assertRelative(0.429796848199937e-3, fit.errors().get(1).getAsDouble(), 1e-10);
    assertRelative(26.6173985294224, fit.residualSquares(), 1e-10);
    assertEquals(34, fit.degreesOfFreedom());
  }

  /** NIST StRD, linear regression, Longley: certified values. */
  @Test
  void longley_is_fitted_as_certified() {
    double[] certified = {
      -3482258.63459582,
      15.0618722713733,
      -0.0358191792925910,
      -2.02022980381683,
      -1.03322686717359,
      -0.0511041056535807,
      1829.15146461355
    };
    double[] errors = {
      890420.383607373,
      84.9149257747669,
      0.0334910077722432,
      0.488399681651699,
      0.214274163161675,
      0.226073200069370,
      455.478499142212
    };
    LeastSquares.Fit fit = longley();
    for (int i = 0; i < certified.length; i++) {
      assertRelative(certified[i], fit.coefficients().get(i).getAsDouble(), 1e-7);
      assertRelative(errors[i], fit.errors().get(i).getAsDouble(), 1e-7);
    }
    assertRelative(
        304.854073561965, Math.sqrt(fit.residualSquares() / fit.degreesOfFreedom()), 1e-9);
  }

  private static LeastSquares.Fit longley() {
    int rows = PublishedSamples.LONGLEY.length;
    List<double[]> columns = new ArrayList<>();
    columns.add(ones(rows));
    for (int j = 1; j <= 6; j++) {
      int at = j;
      columns.add(Arrays.stream(PublishedSamples.LONGLEY).mapToDouble(row -> row[at]).toArray());
    }
    return LeastSquares.fit(
        columns, Arrays.stream(PublishedSamples.LONGLEY).mapToDouble(row -> row[0]).toArray());
  }

  /** A reference library: Apache Commons Math 3.6.1, OLSMultipleLinearRegression. */
  @Test
  void agrees_with_a_reference_library_on_random_data() {
    Random random = new Random(99);
    double[][] x = new double[40][4];
    double[] y = new double[40];
    for (int i = 0; i < y.length; i++) {
      x[i] = random.doubles(4, -3, 3).toArray();
      y[i] = random.nextGaussian() + x[i][0] - 2 * x[i][3];
    }
    OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
    library.setNoIntercept(true);
    library.newSampleData(y, x);
    List<double[]> columns = new ArrayList<>();
    for (int j = 0; j < 4; j++) {
      int at = j;
      columns.add(Arrays.stream(x).mapToDouble(row -> row[at]).toArray());
    }
    LeastSquares.Fit fit = LeastSquares.fit(columns, y);
    assertArrayEquals(
        library.estimateRegressionParameters(),
        fit.coefficients().stream().mapToDouble(each -> each.getAsDouble()).toArray(),
        1e-11);
    assertArrayEquals(
        library.estimateRegressionParametersStandardErrors(),
        fit.errors().stream().mapToDouble(each -> each.getAsDouble()).toArray(),
        1e-11);
  }

  @Test
  void a_column_that_others_explain_has_no_coefficient() {
    double[] first = {1, 0, 1, 0, 1};
    double[] second = {0, 1, 0, 1, 0};
    LeastSquares.Fit fit =
        LeastSquares.fit(List.of(first, second, ones(5)), new double[] {3, 5, 3, 6, 4});
    assertTrue(fit.coefficients().get(2).isEmpty());
    assertEquals(5.5, fit.coefficients().get(1).getAsDouble(), 1e-12);
    assertEquals(3, fit.degreesOfFreedom());
  }

  @Test
  void no_rows_and_no_columns_are_no_fault() {
    assertTrue(LeastSquares.fit(List.of(), new double[0]).coefficients().isEmpty());
    assertEquals(14, LeastSquares.fit(List.of(), new double[] {1, 2, 3}).residualSquares(), 1e-12);
  }
}
