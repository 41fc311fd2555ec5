package clenchbook.reading.formats.cells;

import java.util.List;

/**
 * One row that holds something.
 *
 * @param number the row as the spreadsheet numbers it, from 1
 * @param cells its cells that hold something, from left to right
 */
public record Row(int number, List<Cell> cells) {}
