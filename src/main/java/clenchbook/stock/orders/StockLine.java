package clenchbook.stock.orders;

import clenchbook.book.Material;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * One shelf with its month, its use and what to order.
 *
 * @param month what moved
 * @param row its row of Materials in force at the month's end; empty when Materials lacks it
 * @param unit what it is counted in: {@code piece}, {@code bar} or {@code kg}
 * @param use what goes in a week
 * @param intervalUse what one shoeing interval uses
 * @param reorder stock at which to order; empty for shoes made by hand
 * @param reorderBasis standard where Reorder at gives it, measured where its use does
 * @param order what to order now; zero for nothing
 * @param pack how many come in one pack
 * @param economic the order quantity that costs least; empty where no wage is given
 * @param unitCost what a piece costs, unrounded: its list cost, else its average
 * @param orderCost what the order will cost, rounded to the minor unit
 * @param supplier from whom; empty when the book does not say
 */
public record StockLine(
    ShelfMonth month,
    Optional<Material> row,
    String unit,
    WeeklyUse use,
    BigDecimal intervalUse,
    Optional<BigDecimal> reorder,
    Basis reorderBasis,
    BigDecimal order,
    BigDecimal pack,
    Optional<BigDecimal> economic,
    BigDecimal unitCost,
    BigDecimal orderCost,
    String supplier) {

  /** Says whether it is a shoe made by hand from bar, which nobody orders. */
  public boolean made() {
    return reorder.isEmpty();
  }

  /** Gives the number of packs of the order. */
  public BigDecimal packs() {
    return order.divide(pack, 0, RoundingMode.CEILING);
  }

  /** Says whether anything at all was there, came or went this month. */
  public boolean moved() {
    return month.opening().signum() != 0
        || month.bought().signum() != 0
        || month.used().signum() != 0
        || month.counted().isPresent();
  }
}
