package clenchbook.reading.proposal;

import clenchbook.reading.formats.cells.Cell;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Tables of equal headings, such as a sheet for each month, speak for each other. */
final class Pools {
  private static final int MOST_ROWS = 1_500;

  private Pools() {}

  static String key(TableContents table) {
    String kind = table.kind().map(Enum::name).orElse("") + table.settled();
    return table.columns().stream()
        .map(column -> column.at() + " " + column.settled() + " " + column.heading())
        .collect(Collectors.joining("\n", kind + "\n", ""));
  }

  /** For each group of equal headings one table with the rows of all. */
  static Map<String, TableContents> of(List<TableContents> tables) {
    Map<String, TableContents> pooled = new HashMap<>();
    for (TableContents table : tables) {
      pooled.merge(key(table), table, Pools::together);
    }
    return pooled;
  }

  private static TableContents together(TableContents one, TableContents other) {
    int from = last(one);
    if (from > MOST_ROWS) {
      return one;
    }
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < one.columns().size(); i++) {
      Column column = one.columns().get(i);
      SortedMap<Integer, Cell> cells = new TreeMap<>(column.cells());
      other.columns().get(i).cells().forEach((row, cell) -> cells.put(from + row, cell));
      columns.add(
          new Column(column.at(), column.heading(), column.meaning(), column.settled(), cells));
    }
    return new TableContents(one.sheet(), one.kind(), one.settled(), one.given(), columns);
  }

  /** The last row of a table that holds something. */
  static int last(TableContents table) {
    return table.columns().stream()
        .filter(column -> !column.cells().isEmpty())
        .mapToInt(column -> column.cells().lastKey())
        .max()
        .orElse(0);
  }
}
