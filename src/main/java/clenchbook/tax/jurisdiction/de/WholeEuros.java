package clenchbook.tax.jurisdiction.de;

import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Bases of the advance return and the tax on them. */
final class WholeEuros {
  private WholeEuros() {}

  /** The base in whole euros, cents left off; toward nothing also below zero. */
  static BigDecimal cut(BigDecimal base) {
    return base.setScale(0, RoundingMode.DOWN);
  }

  /**
   * The tax on a base.
   *
   * @param base the base, cents and all
   * @param percent the rate, 19 for 19 %
   * @return whole euros of the base times the rate, rounded half up to the cent
   */
  static BigDecimal tax(BigDecimal base, BigDecimal percent, MinorUnit unit) {
    return unit.round(cut(base).multiply(percent).movePointLeft(2));
  }
}
