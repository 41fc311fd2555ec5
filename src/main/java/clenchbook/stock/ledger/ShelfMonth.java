package clenchbook.stock.ledger;

import clenchbook.jobs.StockKey;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One shelf over one month: what came, what went, what should be there and what was.
 *
 * @param shelf the item and size
 * @param opening pieces expected at the month's start
 * @param bought pieces bought in the month, returns taken off
 * @param used pieces used in the month
 * @param beyond of the used, how many the book did not know to be there
 * @param countedOn the day of the month's last count; empty when not counted
 * @param counted pieces found at it
 * @param expected pieces expected just before it; where not counted, at the month's end
 * @param closing pieces at the month's end
 * @param average cost by moving average
 * @param fifo cost by first in, first out
 * @param priced whether the average rests on a purchase or a count
 */
public record ShelfMonth(
    StockKey shelf,
    BigDecimal opening,
    BigDecimal bought,
    BigDecimal used,
    BigDecimal beyond,
    Optional<LocalDate> countedOn,
    Optional<BigDecimal> counted,
    BigDecimal expected,
    BigDecimal closing,
    Worth average,
    Worth fifo,
    boolean priced) {

  /**
   * What the shelf was worth by one method, each figure rounded to the minor unit.
   *
   * @param opening at the month's start
   * @param bought what the month's purchases cost
   * @param takenOn what came in by counting stock that the book had never seen
   * @param difference what counts found too much, or too little if negative
   * @param closing at the month's end
   */
  public record Worth(
      BigDecimal opening,
      BigDecimal bought,
      BigDecimal takenOn,
      BigDecimal difference,
      BigDecimal closing) {

    /** Gives the cost of what was used: all that was available less what is left, to the cent. */
    public BigDecimal used() {
      return opening.add(bought).add(takenOn).add(difference).subtract(closing);
    }

    /** Adds another shelf's figures. */
    public Worth plus(Worth other) {
      return new Worth(
          opening.add(other.opening),
          bought.add(other.bought),
          takenOn.add(other.takenOn),
          difference.add(other.difference),
          closing.add(other.closing));
    }

    /** Gives nothing, with the currency's decimals. */
    public static Worth nothing(BigDecimal zero) {
      return new Worth(zero, zero, zero, zero, zero);
    }
  }

  /** Gives counted less expected; empty where not counted. */
  public Optional<BigDecimal> difference() {
    return counted.map(found -> found.subtract(expected));
  }
}
