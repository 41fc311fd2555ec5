package clenchbook.tax.year;

import clenchbook.jobs.Jobs;
import clenchbook.stock.ledger.StockWorth;
import clenchbook.values.Period;
import java.math.BigDecimal;

/**
 * What the stock cost at both ends of a period, by moving average, for the invoiced basis.
 *
 * @param opening on the evening before the first day
 * @param closing on the evening of the last day
 * @param counted whether any count stands behind the closing figure, rather than purchases and
 *     visits alone
 */
public record StockValue(BigDecimal opening, BigDecimal closing, boolean counted) {
  /** No stock known. */
  public static final StockValue NONE = new StockValue(BigDecimal.ZERO, BigDecimal.ZERO, false);

  /** The stock of a book at both ends of a period. */
  public static StockValue of(Jobs jobs, Period period) {
    StockWorth before = StockWorth.on(jobs, period.first().minusDays(1));
    StockWorth after = StockWorth.on(jobs, period.last());
    return new StockValue(before.amount(), after.amount(), after.counted());
  }
}
