package clenchbook.tax.jurisdiction.au;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts as the activity statement takes them. */
final class WholeDollars {
  private WholeDollars() {}

  /**
   * The whole dollars of an amount, cents left off, never rounded up (Taxation Administration Act
   * 1953, Schedule 1, s.388-85).
   *
   * @param amount any amount
   * @return whole dollars without decimals; of an amount below zero the size, as the statement
   *     takes no minus signs
   */
  static BigDecimal cut(BigDecimal amount) {
    return amount.abs().setScale(0, RoundingMode.DOWN);
  }
}
