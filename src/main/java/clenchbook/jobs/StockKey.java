package clenchbook.jobs;

import clenchbook.book.Names;
import java.util.Comparator;

/**
 * What is kept on one shelf: an item and a size that has a row of its own, or the item without
 * size.
 *
 * @param item the item's name as Materials spells it
 * @param size its size; empty for the row without size
 */
public record StockKey(String item, String size) implements Comparable<StockKey> {
  private static final Comparator<StockKey> ORDER =
      Comparator.comparing(StockKey::item, Names.ORDER).thenComparing(StockKey::size, Names.ORDER);

  @Override
  public int compareTo(StockKey other) {
    return ORDER.compare(this, other);
  }
}
