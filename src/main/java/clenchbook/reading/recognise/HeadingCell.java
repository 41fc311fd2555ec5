package clenchbook.reading.recognise;

import clenchbook.book.understood.How;
import clenchbook.reading.formats.cells.Cell;

/**
 * A cell of a heading row and what its column means.
 *
 * @param cell the cell
 * @param heading the program's heading; empty for a column that is not read
 * @param how how that was found
 * @param told whether the farrier said that the column is not to be read
 */
public record HeadingCell(Cell cell, String heading, How how, boolean told) {
  static HeadingCell unread(Cell cell) {
    return new HeadingCell(cell, "", How.NOT_READ, false);
  }

  static HeadingCell leftOut(Cell cell) {
    return new HeadingCell(cell, "", How.NOT_READ, true);
  }

  static HeadingCell read(Cell cell, String heading, How how) {
    return new HeadingCell(cell, heading, how, false);
  }
}
