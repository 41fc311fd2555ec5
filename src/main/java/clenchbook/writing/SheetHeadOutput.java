package clenchbook.writing;

import java.util.List;

/**
 * How a written sheet is laid out.
 *
 * @param frozenRows rows at the top that stay in sight
 * @param columns its columns from the left; those beyond have the ordinary width
 */
record SheetHeadOutput(int frozenRows, List<Column> columns) {
  /**
   * A column.
   *
   * @param width in characters
   * @param look how cells typed into it look
   * @param folded whether it is folded away until the plus sign above it is pressed
   */
  record Column(int width, CellLook look, boolean folded) {
    static Column of(int width) {
      return new Column(width, CellLook.PLAIN, false);
    }
  }
}
