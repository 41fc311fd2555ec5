package clenchbook.jobs.charge;

import java.math.BigDecimal;

/**
 * The tax on a line.
 *
 * @param code the code; empty for no tax
 * @param name the name printed; empty for no tax
 * @param ratePercent the rate in force on the day of the visit, in per cent; zero without a code
 * @param exempt true when the payer is exempt: the net stands under its code with tax 0
 * @param included true when the amount holds the tax
 */
public record LineTax(
    String code, String name, BigDecimal ratePercent, boolean exempt, boolean included) {
  /** No tax code at all. */
  public static final LineTax NONE = new LineTax("", "", BigDecimal.ZERO, false, false);

  /**
   * The rate as a fraction.
   *
   * @return 0.2 for 20 per cent, exact
   */
  public BigDecimal rate() {
    return ratePercent.movePointLeft(2);
  }
}
