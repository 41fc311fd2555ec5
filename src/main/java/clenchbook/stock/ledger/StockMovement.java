package clenchbook.stock.ledger;

import clenchbook.jobs.StockKey;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;

/** One thing that changes a shelf: a purchase, a use or a count. */
public sealed interface StockMovement {

  /** By day; within a day purchases, then uses, then counts. */
  Comparator<StockMovement> ORDER =
      Comparator.comparing(StockMovement::date).thenComparing(StockMovement::order);

  /** Gives the day. */
  LocalDate date();

  /** Gives the shelf. */
  StockKey shelf();

  /** Gives how many, in the unit the shelf is counted in. */
  BigDecimal pieces();

  /** Gives its order within a day. */
  int order();

  /**
   * A purchase; less than none is a return.
   *
   * @param date the day bought
   * @param shelf where it goes
   * @param pieces how many, not zero
   * @param cost Net, or Gross where input tax is not recovered
   * @param supplier from whom; may be empty
   */
  record Bought(LocalDate date, StockKey shelf, BigDecimal pieces, BigDecimal cost, String supplier)
      implements StockMovement {
    @Override
    public int order() {
      return 0;
    }
  }

  /**
   * A use: shoes, nails and extras of a visit, the bar of its handmade shoes, gas burned.
   *
   * @param date the day used
   * @param shelf where it comes from
   * @param pieces how many, zero or more
   * @param listCost list cost of a piece that day, unrounded
   */
  record Used(LocalDate date, StockKey shelf, BigDecimal pieces, BigDecimal listCost)
      implements StockMovement {
    @Override
    public int order() {
      return 1;
    }
  }

  /**
   * A count at the end of a day.
   *
   * @param date the day counted
   * @param shelf what was counted
   * @param pieces how many were there
   * @param listCost list cost of a piece that day, unrounded
   */
  record CountedUp(LocalDate date, StockKey shelf, BigDecimal pieces, BigDecimal listCost)
      implements StockMovement {
    @Override
    public int order() {
      return 2;
    }
  }
}
