package clenchbook.yearend;

import java.math.BigDecimal;

/**
 * What the stock cost at both ends of the year, for the invoiced basis.
 *
 * @param opening on the evening before the first day
 * @param closing on the evening of the last day
 * @param counted whether both rest on counts rather than on what purchases and visits leave over
 */
public record StockValue(BigDecimal opening, BigDecimal closing, boolean counted) {
  /** No stock known. */
  public static final StockValue NONE = new StockValue(BigDecimal.ZERO, BigDecimal.ZERO, false);
}
