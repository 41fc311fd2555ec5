package clenchbook.reports.month;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** How figures are written in files: a decimal point, no separators, no exponent. */
final class Figures {
  private static final int MINUTE_DECIMALS = 4;

  private Figures() {}

  static String money(BigDecimal amount) {
    return amount.toPlainString();
  }

  static String money(Optional<BigDecimal> amount) {
    return amount.map(Figures::money).orElse("");
  }

  /** Minutes to four decimals, without trailing zeros. */
  static String minutes(BigDecimal minutes) {
    return plain(minutes.setScale(MINUTE_DECIMALS, RoundingMode.HALF_UP));
  }

  /** A number without trailing zeros. */
  static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  static String count(int count) {
    return Integer.toString(count);
  }
}
