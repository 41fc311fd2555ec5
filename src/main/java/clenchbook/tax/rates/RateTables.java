package clenchbook.tax.rates;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every rate table of a run, the program's own overlaid with the farrier's.
 *
 * @param tables the tables, sorted by name, each name once
 */
public record RateTables(List<RateTable> tables) {

  /** Sorts the tables; refuses two of one name. */
  public RateTables {
    tables = tables.stream().sorted(Comparator.comparing(RateTable::name)).toList();
    long names = tables.stream().map(RateTable::name).distinct().count();
    if (names != tables.size()) {
      throw new IllegalArgumentException("two tables of one name");
    }
  }

  /**
   * The table named {@code name}, as {@code us/mileage}; one without rows where there is none of
   * that name.
   */
  public RateTable table(String name) {
    return tables.stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseGet(() -> new RateTable(name, List.of()));
  }

  /**
   * The row of {@code code} in force on {@code day} in the table {@code name}; empty where there is
   * none.
   */
  public Optional<Rate> find(String name, String code, LocalDate day) {
    return table(name).find(code, day);
  }

  /**
   * These tables overlaid with {@code overlay}, row by row; a table only the overlay has is taken
   * whole.
   */
  public RateTables overlaidWith(Collection<Rate> overlay) {
    Map<String, RateTable> merged = new TreeMap<>();
    tables.forEach(table -> merged.put(table.name(), table));
    overlay.stream()
        .map(Rate::table)
        .distinct()
        .forEach(name -> merged.put(name, table(name).overlaidWith(rowsOf(name, overlay))));
    return new RateTables(List.copyOf(merged.values()));
  }

  private static List<Rate> rowsOf(String name, Collection<Rate> overlay) {
    return overlay.stream().filter(row -> row.table().equals(name)).toList();
  }

  /**
   * The rows that come from the farrier's or accountant's own files, in the order of table, code
   * and day.
   */
  public List<Rate> overlaid() {
    return tables.stream().flatMap(table -> table.rows().stream()).filter(Rate::overlaid).toList();
  }
}
