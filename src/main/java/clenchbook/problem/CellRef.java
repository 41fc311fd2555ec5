package clenchbook.problem;

import clenchbook.texts.Message;

/**
 * A place in the workbook.
 *
 * @param sheet the sheet's own name; empty when the problem is about no sheet
 * @param row the row as the spreadsheet numbers it, from 1; 0 when it is about no row
 * @param column the column's letters, such as {@code C}; empty when it is about no cell
 */
public record CellRef(String sheet, int row, String column) {
  /**
   * A place that is a whole sheet.
   *
   * @param sheet the sheet's own name
   * @return a reference without row and cell
   */
  public static CellRef ofSheet(String sheet) {
    return new CellRef(sheet, 0, "");
  }

  /**
   * The letters of a column.
   *
   * @param index the column, from 0
   * @return {@code A} for 0, {@code AA} for 26
   */
  public static String letters(int index) {
    StringBuilder letters = new StringBuilder();
    for (int rest = index; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }

  /**
   * The number of a column, for ordering.
   *
   * @return from 0; -1 when this is about no cell
   */
  public int columnIndex() {
    int index = 0;
    for (char letter : column.toCharArray()) {
      index = index * 26 + (letter - 'A' + 1);
    }
    return index - 1;
  }

  /**
   * The cell alone.
   *
   * @return such as {@code C14}; empty when this is about no cell
   */
  public String cell() {
    return column.isEmpty() ? "" : column + row;
  }

  @Override
  public String toString() {
    String cell = cell();
    if (!cell.isEmpty()) {
      return sheet + "!" + cell;
    }
    return row > 0 ? sheet + ", row " + row : sheet;
  }

  /**
   * Where it is, for the farrier.
   *
   * @return sheet and cell, sheet and row, or the sheet alone; {@link Message#NONE} for no place
   */
  public Message place() {
    if (!cell().isEmpty()) {
      return Message.literal(sheet + "!" + cell());
    }
    return row > 0
        ? Message.of("problem.row", sheet, Integer.toString(row))
        : Message.literal(sheet);
  }
}
