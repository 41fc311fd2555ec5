package clenchbook.stock.orders;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * When to order, and how much.
 *
 * <p>Source: Heizer and Render, Operations Management, chapter 12: the reorder point is demand over
 * the lead time plus z standard deviations of it; the economic order quantity is the square root of
 * 2DS/H.
 */
public final class OrderRule {

  /** Table value of z for running out in no more than 5 lead times of 100 (exact: 1.644854). */
  public static final BigDecimal Z_95 = new BigDecimal("1.65");

  private static final MathContext PRECISION = MathContext.DECIMAL64;

  private OrderRule() {}

  /**
   * Gives the stock at which to order.
   *
   * @param use what goes in a week; without a spread no safety stock is added
   * @param leadWeeks weeks until an order is there, zero or more
   * @return pieces, to 16 figures, not rounded to whole ones
   */
  public static BigDecimal reorderPoint(WeeklyUse use, BigDecimal leadWeeks) {
    BigDecimal safety =
        use.spread()
            .map(spread -> spread.multiply(leadWeeks.sqrt(PRECISION)).multiply(Z_95))
            .orElse(BigDecimal.ZERO);
    return use.mean().multiply(leadWeeks).add(safety, PRECISION);
  }

  /**
   * Gives what to order once stock is at or below the reorder point: enough for the reorder point
   * and one shoeing interval's use, in whole packs.
   *
   * @param onHand pieces expected on the shelf
   * @param reorder the reorder point
   * @param intervalUse what one shoeing interval uses
   * @param pack pieces of a pack, above zero
   * @return pieces, a multiple of the pack; zero where stock is above the reorder point
   */
  public static BigDecimal order(
      BigDecimal onHand, BigDecimal reorder, BigDecimal intervalUse, BigDecimal pack) {
    BigDecimal wanted = reorder.add(intervalUse).subtract(onHand);
    if (onHand.compareTo(reorder) > 0 || wanted.signum() <= 0) {
      return BigDecimal.ZERO;
    }
    return wanted.divide(pack, 0, RoundingMode.CEILING).multiply(pack);
  }

  /**
   * Gives the order quantity at which ordering and keeping cost least together.
   *
   * @param demand pieces a year
   * @param orderCost what one order costs
   * @param holdingCost what keeping one piece for a year costs
   * @return pieces, to 16 figures; empty when nothing is used or keeping costs nothing
   */
  public static Optional<BigDecimal> economicQuantity(
      BigDecimal demand, BigDecimal orderCost, BigDecimal holdingCost) {
    if (demand.signum() <= 0 || orderCost.signum() <= 0 || holdingCost.signum() <= 0) {
      return Optional.empty();
    }
    BigDecimal twice = demand.multiply(orderCost).multiply(BigDecimal.valueOf(2));
    return Optional.of(twice.divide(holdingCost, PRECISION).sqrt(PRECISION));
  }
}
