package clenchbook.reading.rows;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import java.util.Map;
import java.util.TreeMap;

/** What stands in the columns of a table that are not read, as far as its first rows show. */
public final class UnreadColumns {
  private static final int MOST_ROWS = 1_000;
  private static final int MOST_COLUMNS = 200;

  private final int[] slots;
  private final Map<Integer, ColumnContents> columns = new TreeMap<>();
  private int rows;

  UnreadColumns(int[] slots) {
    this.slots = slots;
  }

  void take(Row row) {
    if (rows >= MOST_ROWS) {
      return;
    }
    rows++;
    for (Cell cell : row.cells()) {
      boolean read = cell.column() < slots.length && slots[cell.column()] >= 0;
      boolean counted = !read && (columns.size() < MOST_COLUMNS || has(cell.column()));
      if (counted && !RowKind.isBlank(cell)) {
        columns.computeIfAbsent(cell.column(), unused -> new ColumnContents()).take(cell);
      }
    }
  }

  private boolean has(int column) {
    return columns.containsKey(column);
  }

  /** What each such column holds, by column. */
  public Map<Integer, ColumnContents> contents() {
    return Map.copyOf(columns);
  }
}
