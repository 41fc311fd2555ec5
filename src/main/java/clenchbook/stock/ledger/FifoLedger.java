package clenchbook.stock.ledger;

import clenchbook.jobs.StockKey;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Stock at first-in-first-out cost: what was bought first is used up first.
 *
 * <p>Fed exactly as {@link StockLedger} is, and answers what the same uses and the same closing
 * stock cost by the other method an accountant may ask for. Money and quantities are exact; only a
 * purchase's unit cost is a quotient, kept to 34 digits half-up. Source: IAS 2 paragraph 25 (FIFO
 * allowed), from memory.
 *
 * <p>Mutable and not thread-safe: one ledger belongs to one pass over the book.
 */
public final class FifoLedger {

  private static final MathContext PRECISION = new MathContext(34, RoundingMode.HALF_UP);

  private final Map<StockKey, Deque<Layer>> layers = new TreeMap<>();
  private final Map<StockKey, BigDecimal> lastCosts = new TreeMap<>();

  /**
   * Puts a purchase on top of what is there.
   *
   * @throws IllegalArgumentException if {@code pieces} is not above zero
   */
  public void purchase(StockKey key, BigDecimal pieces, BigDecimal totalCost) {
    if (pieces.signum() <= 0) {
      throw new IllegalArgumentException("a purchase needs a quantity above zero: " + pieces);
    }
    BigDecimal unitCost = totalCost.divide(pieces, PRECISION);
    layers(key).addLast(new Layer(pieces, unitCost));
    lastCosts.put(key, unitCost);
  }

  /**
   * Takes a use from the oldest layers, as far as there are any.
   *
   * @return what the pieces taken from known stock cost, unrounded
   */
  public BigDecimal use(StockKey key, BigDecimal pieces) {
    Deque<Layer> stock = layers(key);
    BigDecimal wanted = pieces;
    BigDecimal cost = BigDecimal.ZERO;
    while (wanted.signum() > 0 && !stock.isEmpty()) {
      Layer oldest = stock.removeFirst();
      BigDecimal taken = wanted.min(oldest.pieces());
      cost = cost.add(taken.multiply(oldest.unitCost()));
      wanted = wanted.subtract(taken);
      if (oldest.pieces().compareTo(taken) > 0) {
        stock.addFirst(oldest.less(taken));
      }
    }
    return cost;
  }

  /**
   * Sets the quantity to what was counted: what is missing leaves the oldest layers, what is over
   * comes in at the cost of the latest purchase, or at the list cost where there was none.
   *
   * @return what the difference is worth, negative where stock is missing
   */
  public BigDecimal count(StockKey key, BigDecimal pieces, BigDecimal listUnitCost) {
    BigDecimal difference = pieces.subtract(onHand(key));
    if (difference.signum() < 0) {
      return use(key, difference.negate()).negate();
    }
    BigDecimal unitCost = Optional.ofNullable(lastCosts.get(key)).orElse(listUnitCost);
    if (difference.signum() > 0) {
      layers(key).addLast(new Layer(difference, unitCost));
    }
    return difference.multiply(unitCost);
  }

  /** Gives the quantity on hand. */
  public BigDecimal onHand(StockKey key) {
    return layers(key).stream().map(Layer::pieces).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Gives what the stock on hand cost, unrounded. */
  public BigDecimal value(StockKey key) {
    return layers(key).stream()
        .map(layer -> layer.pieces().multiply(layer.unitCost()))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private Deque<Layer> layers(StockKey key) {
    return layers.computeIfAbsent(key, unused -> new ArrayDeque<>());
  }

  private record Layer(BigDecimal pieces, BigDecimal unitCost) {
    Layer less(BigDecimal taken) {
      return new Layer(pieces.subtract(taken), unitCost);
    }
  }
}
