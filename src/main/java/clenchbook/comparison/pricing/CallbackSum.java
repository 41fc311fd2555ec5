package clenchbook.comparison.pricing;

import clenchbook.book.Shaping;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The callbacks that one method and Work caused.
 *
 * @param work the Work that put the shoes on
 * @param shaping how they were shaped; empty where nothing says so
 * @param jobs how many such jobs the period has
 * @param callbacks how many callbacks came of them
 * @param cost what the callbacks cost, time included
 * @param charged what was charged for them
 */
public record CallbackSum(
    String work,
    Optional<Shaping> shaping,
    int jobs,
    int callbacks,
    BigDecimal cost,
    BigDecimal charged) {

  /** How they were shaped, as files have it: hot, cold, or none. */
  public String method() {
    return Pricing.method(shaping);
  }

  /** What they cost beyond what was charged. */
  public BigDecimal netCost() {
    return cost.subtract(charged);
  }
}
