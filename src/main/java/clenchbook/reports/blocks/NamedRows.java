package clenchbook.reports.blocks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of figures whose rows are about different things: each cell is put under its column's
 * name, and a row leaves blank what it does not say. Where all rows are about one kind of thing,
 * use {@link FiguresOf}.
 */
public final class NamedRows {
  private final List<String> columns;
  private final List<Row> rows = new ArrayList<>();

  private NamedRows(List<String> columns) {
    this.columns = columns;
  }

  /**
   * A table without rows yet.
   *
   * @param columns the columns' names in the file, in order
   * @return the table in the making
   */
  public static NamedRows of(String... columns) {
    return new NamedRows(List.of(columns));
  }

  /**
   * Adds a row, all of whose cells are blank.
   *
   * @return the row
   */
  public Row row() {
    Row row = new Row();
    rows.add(row);
    return row;
  }

  /** A row in the making. */
  public final class Row {
    private final Map<String, String> cells = new LinkedHashMap<>();

    private Row() {
      columns.forEach(column -> cells.put(column, ""));
    }

    /**
     * Puts a cell under a column.
     *
     * @param column the column's name
     * @param cell what stands there in the file
     * @return this
     * @throws IllegalArgumentException where there is no such column
     */
    public Row put(String column, String cell) {
      if (cells.replace(column, cell) == null) {
        throw new IllegalArgumentException("no column " + column);
      }
      return this;
    }

    /**
     * Puts a whole number under a column.
     *
     * @param column the column's name
     * @param count how many
     * @return this
     */
    public Row put(String column, long count) {
      return put(column, Long.toString(count));
    }
  }

  /**
   * The table.
   *
   * @param file the file's name without extension; may hold a folder
   * @return its rows, in the order they were added
   */
  public FigureTable named(String file) {
    return new FigureTable(
        file, columns, rows.stream().map(row -> List.copyOf(row.cells.values())).toList());
  }
}
