package clenchbook.jobs;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Names;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** The Materials sheet by item, size and date. */
public final class MaterialList {
  private final DatedRows<StockKey, Material> rows;
  private final Map<String, String> spelling = new HashMap<>();
  private final Map<String, StockKey> written = new HashMap<>();
  private final TreeMap<String, String> nails = new TreeMap<>();
  private final List<String> names;

  /**
   * Indexes the Materials sheet.
   *
   * @param materials its rows, in row order
   */
  public MaterialList(List<Material> materials) {
    rows = new DatedRows<>(materials, row -> folded(row.item(), row.size()), Material::from);
    TreeSet<String> sorted = new TreeSet<>(Names.ORDER);
    for (Material row : materials) {
      spelling.putIfAbsent(Names.key(row.item()), row.item());
      written.putIfAbsent(
          Names.key(row.item() + " " + row.size()), new StockKey(row.item(), row.size()));
      sorted.add(row.item());
      if (row.kind() == MaterialKind.NAIL) {
        nails.putIfAbsent(Names.key(row.item()), row.item());
      }
    }
    names = List.copyOf(sorted);
  }

  private static StockKey folded(String item, String size) {
    return new StockKey(Names.key(item), Names.key(size));
  }

  /**
   * Finds the item a farrier meant: by its name, by its name and size in one, or in the plural.
   *
   * @param name as written, such as {@code pads} or {@code E-head 5}
   * @param size the size written apart; may be empty
   * @return the item as Materials spells it and the size to look under; empty when unknown
   */
  public Optional<StockKey> findKey(String name, String size) {
    return exact(name, size).or(() -> singular(name, size));
  }

  private Optional<StockKey> singular(String name, String size) {
    String key = Names.key(name);
    if (!key.endsWith("s")) {
      return exact(key + "s", size);
    }
    return exact(key.substring(0, key.length() - 1), size);
  }

  private Optional<StockKey> exact(String name, String size) {
    String item = spelling.get(Names.key(name));
    if (item != null) {
      return Optional.of(new StockKey(item, size));
    }
    return Optional.ofNullable(written.get(Names.key(name)));
  }

  /**
   * The row in force for an item and size: the size's own, else the row without size.
   *
   * @param key item as Materials spells it, and size
   * @param day the day
   * @return the newest row from on or before the day; empty when there is none
   */
  public Optional<Material> find(StockKey key, LocalDate day) {
    StockKey shelf = folded(key.item(), shelf(key).size());
    return rows.find(shelf, day);
  }

  /**
   * The shelf an item and size is kept on.
   *
   * @param key item as Materials spells it, and size
   * @return the size's own shelf when it has a row, else the item's shelf without size
   */
  public StockKey shelf(StockKey key) {
    Optional<Material> own = rows.any(folded(key.item(), key.size()));
    String item = spelling.getOrDefault(Names.key(key.item()), key.item());
    return new StockKey(item, own.map(Material::size).orElse(""));
  }

  /**
   * Any row of a shelf, whatever its date: for facts that do not change, such as the kind.
   *
   * @param shelf the shelf
   * @return a row; empty when unknown
   */
  public Optional<Material> any(StockKey shelf) {
    return rows.any(folded(shelf.item(), shelf.size()));
  }

  /**
   * The nail to assume when nobody names one.
   *
   * @return the only nail item there is; empty when there are none or several
   */
  public Optional<String> onlyNail() {
    return nails.size() == 1 ? Optional.of(nails.firstEntry().getValue()) : Optional.empty();
  }

  /**
   * All item names.
   *
   * @return in order, each once
   */
  public List<String> names() {
    return names;
  }

  /**
   * Rows that override another of the same item, size and date.
   *
   * @return in row order
   */
  public List<Material> overriding() {
    return rows.overriding();
  }
}
