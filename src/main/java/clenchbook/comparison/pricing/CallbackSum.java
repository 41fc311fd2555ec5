package clenchbook.comparison.pricing;

import java.math.BigDecimal;

/**
 * The callbacks that one method and Work caused.
 *
 * @param work the Work that put the shoes on
 * @param method how they were shaped: hot, cold, or none
 * @param jobs how many such jobs the period has
 * @param callbacks how many callbacks came of them
 * @param cost what the callbacks cost, time included
 * @param charged what was charged for them
 */
public record CallbackSum(
    String work, String method, int jobs, int callbacks, BigDecimal cost, BigDecimal charged) {

  /** What they cost beyond what was charged. */
  public BigDecimal netCost() {
    return cost.subtract(charged);
  }
}
