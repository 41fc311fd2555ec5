package clenchbook.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A least-squares fit by Householder's QR decomposition (Golub and Van Loan, "Matrix Computations",
 * section 5.2; from memory). A column that those before it explain is left out and has no
 * coefficient.
 */
public final class LeastSquares {

  /** A column whose rest is no more than this part of it is explained by those before it. */
  private static final double EXPLAINED = 1e-9;

  private final double[][] columns;
  private final double[] right;
  private final double[] norms;
  private final List<Integer> kept = new ArrayList<>();

  private LeastSquares(double[][] columns, double[] right) {
    this.columns = columns;
    this.right = right;
    this.norms = new double[columns.length];
    for (int j = 0; j < columns.length; j++) {
      norms[j] = norm(columns[j], 0);
    }
  }

  /**
   * What a fit found.
   *
   * @param coefficients one a column; empty for a column left out
   * @param errors their standard errors; empty without degrees of freedom, too
   * @param residualSquares the sum of squared residuals
   * @param degreesOfFreedom rows less columns kept, or what is left of those given; may be 0 or
   *     less
   */
  public record Fit(
      List<OptionalDouble> coefficients,
      List<OptionalDouble> errors,
      double residualSquares,
      int degreesOfFreedom) {

    /** Copies the lists. */
    public Fit {
      coefficients = List.copyOf(coefficients);
      errors = List.copyOf(errors);
    }
  }

  /**
   * Fits {@code y} to the columns. No constant is added; give a column of ones for one.
   *
   * @param columns one array a column, each as long as {@code y}; not changed
   * @param y the values to explain; not changed
   */
  public static Fit fit(List<double[]> columns, double[] y) {
    return fit(columns, y, y.length, 0);
  }

  /**
   * Fits data that were summed up before.
   *
   * @param columns one array a column, each as long as {@code y}; not changed
   * @param y the values to explain; not changed
   * @param freedom the degrees of freedom that are there before the columns take theirs
   * @param squares squared residuals that were summed up before and that no column can explain
   */
  static Fit fit(List<double[]> columns, double[] y, int freedom, double squares) {
    double[][] copies = columns.stream().map(double[]::clone).toArray(double[][]::new);
    LeastSquares work = new LeastSquares(copies, y.clone());
    work.decompose();
    return work.solve(freedom, squares);
  }

  private void decompose() {
    for (int j = 0; j < columns.length && kept.size() < right.length; j++) {
      int from = kept.size();
      double rest = norm(columns[j], from);
      if (rest > EXPLAINED * norms[j]) {
        reflect(j, from, rest);
        kept.add(j);
      }
    }
  }

  /** Turns column {@code j} so that nothing stands below row {@code from}, and all after it. */
  private void reflect(int j, int from, double rest) {
    double[] mirror = columns[j].clone();
    double diagonal = mirror[from] > 0 ? -rest : rest;
    mirror[from] -= diagonal;
    double square = norm(mirror, from);
    for (int k = j; k < columns.length; k++) {
      apply(mirror, from, square * square, columns[k]);
    }
    apply(mirror, from, square * square, right);
  }

  private static void apply(double[] mirror, int from, double square, double[] vector) {
    double product = 0;
    for (int i = from; i < vector.length; i++) {
      product += mirror[i] * vector[i];
    }
    double factor = 2 * product / square;
    for (int i = from; i < vector.length; i++) {
      vector[i] -= factor * mirror[i];
    }
  }

  private Fit solve(int freedomBefore, double squaresBefore) {
    int rank = kept.size();
    double squares = Math.pow(norm(right, rank), 2) + squaresBefore;
    int freedom = freedomBefore - rank;
    double[][] inverse = inverse(rank);
    List<OptionalDouble> coefficients = new ArrayList<>();
    List<OptionalDouble> errors = new ArrayList<>();
    for (int j = 0; j < columns.length; j++) {
      int row = kept.indexOf(j);
      coefficients.add(row < 0 ? OptionalDouble.empty() : OptionalDouble.of(dot(inverse[row])));
      errors.add(
          row < 0 || freedom < 1
              ? OptionalDouble.empty()
              : OptionalDouble.of(norm(inverse[row], 0) * Math.sqrt(squares / freedom)));
    }
    return new Fit(coefficients, errors, squares, freedom);
  }

  /** The inverse of the triangle that the kept columns were turned into. */
  private double[][] inverse(int rank) {
    double[][] inverse = new double[rank][rank];
    for (int column = 0; column < rank; column++) {
      for (int row = column; row >= 0; row--) {
        double sum = row == column ? 1 : 0;
        for (int k = row + 1; k <= column; k++) {
          sum -= columns[kept.get(k)][row] * inverse[k][column];
        }
        inverse[row][column] = sum / columns[kept.get(row)][row];
      }
    }
    return inverse;
  }

  private double dot(double[] row) {
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      sum += row[i] * right[i];
    }
    return sum;
  }

  /** The length of a vector from row {@code from} on, safe against overflow. */
  private static double norm(double[] vector, int from) {
    double largest = 0;
    for (int i = from; i < vector.length; i++) {
      largest = Math.max(largest, Math.abs(vector[i]));
    }
    if (largest == 0) {
      return 0;
    }
    double sum = 0;
    for (int i = from; i < vector.length; i++) {
      sum += (vector[i] / largest) * (vector[i] / largest);
    }
    return largest * Math.sqrt(sum);
  }
}
