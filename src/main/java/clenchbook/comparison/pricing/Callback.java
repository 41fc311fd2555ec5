package clenchbook.comparison.pricing;

import clenchbook.comparison.questions.ComparedJob;
import java.math.BigDecimal;

/**
 * A free or lost-shoe visit soon after the visit that put the shoes on.
 *
 * @param visit the callback
 * @param cause the row that put the shoes on
 * @param days days between the two
 */
public record Callback(ComparedJob visit, ComparedJob cause, long days) {

  /** What the callback cost, time included. */
  public BigDecimal cost() {
    return visit.money().cost();
  }

  /** What it cost beyond what was charged for it; below 0 where it paid for itself. */
  public BigDecimal netCost() {
    return cost().subtract(visit.money().charged());
  }
}
