package clenchbook.reading.proposal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which columns of a table are made of others: sums or products of two, and running balances. */
final class RowSums {
  private static final int FEWEST_ROWS = 4;
  private static final int MOST_COLUMNS = 24;
  private static final int MOST = 90;
  private static final BigDecimal MOST_SHARE = new BigDecimal("1.30");

  private final Set<Integer> sums = new HashSet<>();
  private final Set<Integer> bases = new HashSet<>();
  private final Set<Integer> running = new HashSet<>();

  /** Looks at the columns of a table, by their places in the list. */
  static RowSums of(List<ColumnProfile> columns) {
    RowSums found = new RowSums();
    List<Integer> numeric = new ArrayList<>();
    for (int i = 0; i < columns.size() && numeric.size() < MOST_COLUMNS; i++) {
      if (columns.get(i).numbers().size() >= FEWEST_ROWS) {
        numeric.add(i);
      }
    }
    for (int made : numeric) {
      if (found.isSum(columns, numeric, made)) {
        found.sums.add(made);
      }
      for (int base : numeric) {
        if (base != made && isWithShare(columns.get(made), columns.get(base))) {
          found.sums.add(made);
          found.bases.add(base);
        }
      }
      if (numeric.stream().anyMatch(of -> of != made && isRunning(columns, made, of))) {
        found.running.add(made);
      }
    }
    return found;
  }

  /** Whether a column is the sum or product of two others, row by row. */
  boolean isSum(int column) {
    return sums.contains(column);
  }

  /** Whether another column is this one with a fixed share added. */
  boolean isBase(int column) {
    return bases.contains(column);
  }

  /** Whether each number is the one above it and that of another column. */
  boolean isRunning(int column) {
    return running.contains(column);
  }

  private boolean isSum(List<ColumnProfile> columns, List<Integer> numeric, int made) {
    for (int one : numeric) {
      for (int other : numeric) {
        boolean pair = one < other && one != made && other != made;
        if (pair && isMade(columns.get(made), columns.get(one), columns.get(other))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isMade(ColumnProfile made, ColumnProfile one, ColumnProfile other) {
    int rows = 0;
    int right = 0;
    Set<BigDecimal> second = new HashSet<>();
    for (Map.Entry<Integer, BigDecimal> value : made.numbers().entrySet()) {
      BigDecimal a = one.numbers().get(value.getKey());
      BigDecimal b = other.numbers().get(value.getKey());
      if (a != null && b != null && a.signum() != 0 && b.signum() != 0) {
        rows++;
        second.add(value.getValue().stripTrailingZeros());
        boolean sum = value.getValue().compareTo(a.add(b)) == 0;
        boolean product = isProduct(value.getValue(), a, b);
        right += sum || product ? 1 : 0;
        if (rows > FEWEST_ROWS && right * 2 < rows) {
          return false;
        }
      }
    }
    return rows >= FEWEST_ROWS && second.size() > 1 && right * 100 >= rows * MOST;
  }

  private static boolean isProduct(BigDecimal value, BigDecimal a, BigDecimal b) {
    boolean times = a.compareTo(BigDecimal.ONE) != 0 && b.compareTo(BigDecimal.ONE) != 0;
    return times && a.multiply(b).setScale(2, RoundingMode.HALF_UP).compareTo(value) == 0;
  }

  /** Whether a column is another with up to 30 per cent added, always the same share. */
  private static boolean isWithShare(ColumnProfile made, ColumnProfile base) {
    Set<BigDecimal> values = new HashSet<>();
    Map<BigDecimal, Integer> shares = new HashMap<>();
    int rows = 0;
    for (Map.Entry<Integer, BigDecimal> value : base.numbers().entrySet()) {
      BigDecimal more = made.numbers().get(value.getKey());
      if (more != null && value.getValue().signum() > 0) {
        rows++;
        values.add(value.getValue().stripTrailingZeros());
        shares.merge(more.divide(value.getValue(), 2, RoundingMode.HALF_UP), 1, Integer::sum);
      }
    }
    int right =
        shares.entrySet().stream()
            .filter(share -> share.getKey().compareTo(BigDecimal.ONE) > 0)
            .filter(share -> share.getKey().compareTo(MOST_SHARE) <= 0)
            .mapToInt(Map.Entry::getValue)
            .max()
            .orElse(0);
    return rows >= FEWEST_ROWS && values.size() > 1 && right * 100 >= rows * MOST;
  }

  private static boolean isRunning(List<ColumnProfile> columns, int made, int of) {
    Map<Integer, BigDecimal> steps = columns.get(of).numbers();
    int rows = 0;
    int right = 0;
    Optional<BigDecimal> before = Optional.empty();
    for (Map.Entry<Integer, BigDecimal> value : columns.get(made).numbers().entrySet()) {
      BigDecimal step = steps.get(value.getKey());
      if (before.isPresent() && step != null && step.signum() != 0) {
        rows++;
        right += before.get().add(step).compareTo(value.getValue()) == 0 ? 1 : 0;
      }
      before = Optional.of(value.getValue());
    }
    return rows >= FEWEST_ROWS && right * 100 >= rows * (MOST - 40);
  }
}
