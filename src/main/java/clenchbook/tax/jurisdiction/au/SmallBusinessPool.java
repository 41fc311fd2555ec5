package clenchbook.tax.jurisdiction.au;

import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;

/**
 * One year of the general small business pool (Income Tax Assessment Act 1997, Subdivision 328-D).
 * Every amount is the business part only.
 *
 * @param opening the balance carried from the year before; zero or more
 * @param added cost of what was added this year
 * @param disposed what was received for assets of the pool sold this year
 * @param deduction what the year may deduct, rounded half up to the minor unit
 * @param income what proceeds beyond the whole pool add to income; zero or more
 */
record SmallBusinessPool(
    BigDecimal opening,
    BigDecimal added,
    BigDecimal disposed,
    BigDecimal deduction,
    BigDecimal income) {

  /**
   * Works out the year.
   *
   * @param opening the balance carried from the year before
   * @param added cost of what was added this year
   * @param disposed proceeds of assets of the pool
   * @param poolRate the factor on the opening balance (s.328-190(1))
   * @param firstYearRate the factor on what was added (s.328-190(2))
   * @param lowPool below this the whole pool is deducted (s.328-210)
   * @param unit the minor unit to round to
   * @return the year
   */
  static SmallBusinessPool of(
      BigDecimal opening,
      BigDecimal added,
      BigDecimal disposed,
      BigDecimal poolRate,
      BigDecimal firstYearRate,
      BigDecimal lowPool,
      MinorUnit unit) {
    BigDecimal whole = opening.add(added).subtract(disposed);
    if (whole.signum() < 0) {
      BigDecimal nothing = unit.zero();
      return new SmallBusinessPool(opening, added, disposed, nothing, whole.negate());
    }
    BigDecimal parts =
        unit.round(opening.multiply(poolRate)).add(unit.round(added.multiply(firstYearRate)));
    BigDecimal deduction = whole.compareTo(lowPool) < 0 ? unit.round(whole) : parts.min(whole);
    return new SmallBusinessPool(opening, added, disposed, deduction, unit.zero());
  }

  /** The balance carried into the next year, never below zero (s.328-200). */
  BigDecimal closing() {
    return opening.add(added).subtract(disposed).subtract(deduction).max(BigDecimal.ZERO);
  }
}
