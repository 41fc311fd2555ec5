package clenchbook.stock;

import java.util.Comparator;

/**
 * One thing kept in stock: an item in one size.
 *
 * <p>The size is text, because {@code 00} is not {@code 0}; it is empty for what has no size and
 * for the price row that serves every size without a row of its own.
 *
 * @param item the item's name as Materials writes it, never empty
 * @param size the size, or empty
 */
public record StockKey(String item, String size) implements Comparable<StockKey> {

  private static final Comparator<StockKey> ORDER =
      Comparator.comparing(StockKey::item).thenComparing(StockKey::size);

  /** Refuses an empty item. */
  public StockKey {
    if (item.isEmpty()) {
      throw new IllegalArgumentException("a stock key needs an item");
    }
  }

  /** Gives the key of an item that has no size. */
  public static StockKey of(String item) {
    return new StockKey(item, "");
  }

  /** Orders by item, then size, as plain text. */
  @Override
  public int compareTo(StockKey other) {
    return ORDER.compare(this, other);
  }
}
