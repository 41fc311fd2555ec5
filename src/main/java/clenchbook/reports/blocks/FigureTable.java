package clenchbook.reports.blocks;

import java.util.List;

/**
 * A table of figures for a CSV file. Numbers are texts with a decimal point and no separators,
 * dates ISO, an absent value empty.
 *
 * @param name the file's name without extension, such as {@code jobs}; may hold a folder
 * @param columns its columns, in order
 * @param rows its rows, each with as many texts as columns
 */
public record FigureTable(String name, List<String> columns, List<List<String>> rows) {
  /** Copies its lists and refuses rows of another length. */
  public FigureTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(name + ": " + row + " for " + columns);
      }
    }
  }

  /**
   * A table whose columns are written as the file's first line will be.
   *
   * @param name the file's name without extension
   * @param columns the columns' names with commas between them
   * @param rows its rows, each with as many texts as columns
   * @return the table
   */
  public static FigureTable of(String name, String columns, List<List<String>> rows) {
    return new FigureTable(name, List.of(columns.split(",")), rows);
  }
}
