package clenchbook.tax.jurisdiction.ca;

import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;

/**
 * One year of a class of capital cost allowance, as Area A of Form T2125 works it out, with the
 * most that may be claimed.
 *
 * @param opening undepreciated capital cost at the start of the year; zero or more
 * @param added cost of what was added
 * @param disposed what was received for things sold, at most what each cost
 * @param claim the most that may be claimed, rounded half up
 * @param recapture what sales beyond the whole class bring into income; zero or more
 * @param terminalLoss what is left once nothing of the class is held; zero or more
 */
record CcaYear(
    BigDecimal opening,
    BigDecimal added,
    BigDecimal disposed,
    BigDecimal claim,
    BigDecimal recapture,
    BigDecimal terminalLoss) {

  /**
   * Works out the year.
   *
   * @param held whether anything of the class is held at the year's end
   * @param rate the class's factor, 0.3 for 30 %
   * @param firstYear the share of net additions that counts, 0.5 under the half-year rule
   */
  static CcaYear of(
      BigDecimal opening,
      BigDecimal added,
      BigDecimal disposed,
      BigDecimal rate,
      BigDecimal firstYear,
      boolean held,
      MinorUnit unit) {
    BigDecimal whole = opening.add(added).subtract(disposed);
    if (whole.signum() < 0) {
      return new CcaYear(opening, added, disposed, unit.zero(), whole.negate(), unit.zero());
    }
    if (!held) {
      return new CcaYear(opening, added, disposed, unit.zero(), unit.zero(), whole);
    }
    BigDecimal net = added.subtract(disposed).max(BigDecimal.ZERO);
    BigDecimal base = whole.subtract(net).add(net.multiply(firstYear));
    BigDecimal claim = unit.round(base.multiply(rate)).min(unit.round(whole));
    return new CcaYear(opening, added, disposed, claim, unit.zero(), unit.zero());
  }

  /** The balance carried into the next year. */
  BigDecimal closing() {
    return opening
        .add(added)
        .subtract(disposed)
        .subtract(claim)
        .subtract(terminalLoss)
        .max(BigDecimal.ZERO);
  }
}
