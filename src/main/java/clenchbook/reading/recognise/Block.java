package clenchbook.reading.recognise;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import java.util.List;

/**
 * The columns that belong to a table.
 *
 * @param first from 0
 * @param last inclusive
 */
public record Block(int first, int last) {
  /** The whole width of a sheet. */
  public static final Block WHOLE = new Block(0, Integer.MAX_VALUE);

  /** Whether a column is one of these. */
  public boolean holds(int column) {
    return column >= first && column <= last;
  }

  /** Whether two blocks have a column in common. */
  public boolean meets(Block other) {
    return first <= other.last && other.first <= last;
  }

  /** The part of a row that lies in the block; the row itself where that is all of it. */
  public Row of(Row row) {
    if (equals(WHOLE)) {
      return row;
    }
    List<Cell> inside = row.cells().stream().filter(cell -> holds(cell.column())).toList();
    return new Row(row.number(), inside);
  }
}
