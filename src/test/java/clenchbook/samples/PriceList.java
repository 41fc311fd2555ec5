package clenchbook.samples;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Looks up the sample's own price list the way its farrier does in the head. */
final class PriceList {
  private final List<Map<String, Object>> rows;
  private final String key;

  PriceList(Tab tab, String key) {
    this.rows = tab.rows;
    this.key = key;
  }

  /** Gives the figure in a column of the newest row on or before a day, or 0. */
  double at(String name, String column, LocalDate day) {
    double found = 0;
    for (Map<String, Object> row : rows) {
      LocalDate from = (LocalDate) row.getOrDefault("From", LocalDate.EPOCH);
      if (name.equals(row.get(key)) && !from.isAfter(day)) {
        found = row.get(column) instanceof BigDecimal figure ? figure.doubleValue() : 0;
      }
    }
    return found;
  }

  /** Gives the figure of the row with this size, else of the row without size. */
  double sized(String name, String size, String column, LocalDate day) {
    double found = 0;
    for (Map<String, Object> row : rows) {
      LocalDate from = (LocalDate) row.getOrDefault("From", LocalDate.EPOCH);
      boolean fits =
          size.equals(row.getOrDefault("Size", "")) || !row.containsKey("Size") && found == 0;
      if (name.equals(row.get(key)) && fits && !from.isAfter(day)) {
        found = row.get(column) instanceof BigDecimal figure ? figure.doubleValue() : 0;
      }
    }
    return found;
  }

  Object text(String name, String column) {
    return rows.stream()
        .filter(row -> name.equals(row.get(key)))
        .map(row -> row.getOrDefault(column, ""))
        .findFirst()
        .orElse("");
  }
}
