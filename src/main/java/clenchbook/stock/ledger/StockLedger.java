package clenchbook.stock.ledger;

import clenchbook.jobs.StockKey;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Stock at moving-average cost, item by item, fed event by event.
 *
 * <p>Feed it in date order and, within a day, purchases first, then uses, then counts. Quantities
 * are pieces (bars and gas in the unit they are counted in); money is in the book's currency.
 * Averages keep 34 digits, half-up, and are never rounded to the cent here, so that what was used
 * and what is left add up to what was bought. A total that must be rounded to the cent goes through
 * {@link #settled} first.
 *
 * <p>Rules: a purchase is averaged into what is on hand; a use lowers the quantity, which never
 * falls below none, and leaves the average alone; a count sets the quantity at the current average.
 * Stock that was counted but never bought enters the average at that day's list cost. An item not
 * bought up to a use costs its list price of that day. Source of the method: IAS 2 paragraph 25
 * (weighted average allowed), from memory.
 *
 * <p>Mutable and not thread-safe: one ledger belongs to one pass over the book.
 */
public final class StockLedger {

  private static final MathContext PRECISION = new MathContext(34, RoundingMode.HALF_UP);
  private static final int SETTLED_SCALE = 20;

  private final Map<StockKey, Holding> holdings = new TreeMap<>();

  /**
   * Takes a purchase into stock.
   *
   * @param key what was bought
   * @param pieces how many, above zero
   * @param totalCost what all of them cost, Net or Gross as the caller's tax position asks
   * @throws IllegalArgumentException if {@code pieces} is not above zero or the cost is negative
   */
  public void purchase(StockKey key, BigDecimal pieces, BigDecimal totalCost) {
    if (pieces.signum() <= 0) {
      throw new IllegalArgumentException("a purchase needs a quantity above zero: " + pieces);
    }
    requireNotNegative(totalCost);
    Holding before = holding(key);
    BigDecimal quantity = before.quantity().add(pieces);
    BigDecimal average =
        before.value().add(totalCost).divide(quantity, PRECISION).stripTrailingZeros();
    holdings.put(key, new Holding(quantity, Optional.of(average), true));
  }

  /**
   * Takes a use out of stock and prices it.
   *
   * @return the unit cost of this use, unrounded: the moving average where the item was ever bought
   *     before, else {@code listUnitCost}
   */
  public BigDecimal use(StockKey key, BigDecimal pieces, BigDecimal listUnitCost) {
    return issue(key, pieces, listUnitCost).unitCost();
  }

  /**
   * Takes a use out of stock and says how much of it the stock could give.
   *
   * @param key what was used
   * @param pieces how many, zero or more
   * @param listUnitCost the list cost of one piece that day
   * @throws IllegalArgumentException if a figure is negative
   */
  public Issue issue(StockKey key, BigDecimal pieces, BigDecimal listUnitCost) {
    requireNotNegative(pieces);
    requireNotNegative(listUnitCost);
    Holding before = holding(key);
    BigDecimal taken = pieces.min(before.quantity());
    BigDecimal unitCost = before.bought() ? before.average().orElseThrow() : listUnitCost;
    BigDecimal left = before.quantity().subtract(taken);
    holdings.put(key, new Holding(left, before.average(), before.bought()));
    return new Issue(unitCost, taken, pieces.subtract(taken));
  }

  /**
   * Sets the quantity to what was counted, at the current average.
   *
   * @param key what was counted
   * @param pieces how many were there, zero or more
   * @param listUnitCost the list cost of one piece that day, the average's start where the item was
   *     never bought or counted
   * @return counted less expected: negative where stock is missing
   * @throws IllegalArgumentException if a figure is negative
   */
  public BigDecimal count(StockKey key, BigDecimal pieces, BigDecimal listUnitCost) {
    requireNotNegative(pieces);
    requireNotNegative(listUnitCost);
    Holding before = holding(key);
    BigDecimal average = before.average().orElse(listUnitCost);
    holdings.put(key, new Holding(pieces, Optional.of(average), before.bought()));
    return pieces.subtract(before.quantity());
  }

  /** Gives the quantity the ledger expects to be there, never below zero. */
  public BigDecimal onHand(StockKey key) {
    return holding(key).quantity();
  }

  /**
   * Gives the current average cost of a piece, unrounded; empty for what was never bought or
   * counted.
   */
  public Optional<BigDecimal> average(StockKey key) {
    return holding(key).average();
  }

  /** Gives what the stock on hand cost, unrounded. */
  public BigDecimal value(StockKey key) {
    return holding(key).value();
  }

  /** Says whether a purchase of this item and size has come in so far. */
  public boolean bought(StockKey key) {
    return holding(key).bought();
  }

  /**
   * Clears an amount of what its division left in the last digits, before it is rounded to the
   * cent: three pieces at a third of 0.025 are 0.025 and round up, not 0.0249… and down.
   *
   * @return the amount at 20 decimals, half-up
   */
  public static BigDecimal settled(BigDecimal amount) {
    return amount.setScale(SETTLED_SCALE, RoundingMode.HALF_UP);
  }

  private Holding holding(StockKey key) {
    return holdings.getOrDefault(key, Holding.NONE);
  }

  private static void requireNotNegative(BigDecimal figure) {
    if (figure.signum() < 0) {
      throw new IllegalArgumentException("a quantity or cost may not be negative: " + figure);
    }
  }

  /**
   * One use as the ledger booked it.
   *
   * @param unitCost what a piece of it cost, unrounded
   * @param taken how many pieces came from known stock
   * @param beyond how many more were used than the book knew to be there
   */
  public record Issue(BigDecimal unitCost, BigDecimal taken, BigDecimal beyond) {}

  private record Holding(BigDecimal quantity, Optional<BigDecimal> average, boolean bought) {

    static final Holding NONE = new Holding(BigDecimal.ZERO, Optional.empty(), false);

    BigDecimal value() {
      return average.map(quantity::multiply).orElse(BigDecimal.ZERO);
    }
  }
}
