package clenchbook.stock.orders;

import clenchbook.jobs.StockKey;
import clenchbook.stock.ledger.StockMovement;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How much of a shelf goes in a week, and how much that varies.
 *
 * <p>Weeks are counted back in sevens from the month's end, at most 26 of them and no further than
 * the book's first visit; weeks without use count as none.
 *
 * @param weeks how many whole weeks it rests on
 * @param mean pieces a week, to 10 decimals
 * @param spread standard deviation with n - 1, to 10 decimals; empty with fewer than two weeks
 */
public record WeeklyUse(int weeks, BigDecimal mean, Optional<BigDecimal> spread) {

  private static final int MOST_WEEKS = 26;
  private static final int SCALE = 10;

  /** Gives the use of no weeks at all. */
  static final WeeklyUse UNKNOWN = new WeeklyUse(0, BigDecimal.ZERO, Optional.empty());

  /**
   * Works out the weekly use of every shelf that was used.
   *
   * @param movements in any order
   * @param start the book's first visit
   * @param end the month's last day
   */
  static Map<StockKey, WeeklyUse> of(
      List<StockMovement> movements, LocalDate start, LocalDate end) {
    int weeks = (int) Math.min(MOST_WEEKS, (ChronoUnit.DAYS.between(start, end) + 1) / 7);
    Map<StockKey, List<BigDecimal>> used = new TreeMap<>();
    for (StockMovement movement : movements) {
      long week = Math.floorDiv(ChronoUnit.DAYS.between(movement.date(), end), 7L);
      if (movement instanceof StockMovement.Used && week >= 0 && week < weeks) {
        List<BigDecimal> byWeek =
            used.computeIfAbsent(
                movement.shelf(),
                key -> new ArrayList<>(Collections.nCopies(weeks, BigDecimal.ZERO)));
        byWeek.set((int) week, byWeek.get((int) week).add(movement.pieces()));
      }
    }
    Map<StockKey, WeeklyUse> result = new TreeMap<>();
    used.forEach((shelf, byWeek) -> result.put(shelf, of(byWeek)));
    return result;
  }

  /** Gives mean and spread of some weeks. */
  static WeeklyUse of(List<BigDecimal> byWeek) {
    int n = byWeek.size();
    if (n == 0) {
      return UNKNOWN;
    }
    BigDecimal sum = byWeek.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal mean = sum.divide(BigDecimal.valueOf(n), SCALE, RoundingMode.HALF_UP);
    return new WeeklyUse(n, mean, n < 2 ? Optional.empty() : Optional.of(spread(byWeek, sum)));
  }

  /** Σx² - (Σx)²/n in exact decimals, so nothing is lost to cancellation. */
  private static BigDecimal spread(List<BigDecimal> byWeek, BigDecimal sum) {
    BigDecimal n = BigDecimal.valueOf(byWeek.size());
    BigDecimal squares =
        byWeek.stream().map(x -> x.multiply(x)).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal scatter = n.multiply(squares).subtract(sum.multiply(sum));
    return scatter
        .max(BigDecimal.ZERO)
        .divide(n.multiply(n.subtract(BigDecimal.ONE)), MathContext.DECIMAL128)
        .sqrt(MathContext.DECIMAL128)
        .setScale(SCALE, RoundingMode.HALF_UP);
  }
}
