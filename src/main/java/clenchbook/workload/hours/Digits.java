package clenchbook.workload.hours;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the pages and figures of this package print them. */
public final class Digits {
  private Digits() {}

  /** At most two decimals, half up, no trailing zeros, decimal point. */
  public static String plain(double number) {
    return rounded(number, 2).toPlainString();
  }

  /** Exactly so many decimals, half up, decimal point, no separators; minus zero is zero. */
  public static String fixed(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** Half up to so many decimals, trailing zeros dropped. */
  public static BigDecimal rounded(double number, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal stripped = rounded.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
