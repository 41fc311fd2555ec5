package clenchbook.comparison;

import clenchbook.statistics.Interval;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/** Numbers as text: for files with six decimals at most, for people with as many as asked. */
final class Numbers {

  private static final int DECIMALS = 6;

  /** A figure that no bound holds. */
  static final String NEVER = "never";

  private Numbers() {}

  static String file(double value) {
    if (Double.isInfinite(value)) {
      return NEVER;
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static String file(OptionalDouble value) {
    return value.isPresent() ? file(value.getAsDouble()) : "";
  }

  static String low(Optional<Interval> interval) {
    return interval.map(each -> file(each.low())).orElse("");
  }

  static String high(Optional<Interval> interval) {
    return interval.map(each -> file(each.high())).orElse("");
  }

  static String rounded(double value, int decimals) {
    if (Double.isInfinite(value)) {
      return NEVER;
    }
    return filed(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** The file's digits, so that who rounds the file gets what people read. */
  static BigDecimal filed(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
