package clenchbook.reading.recognise;

import clenchbook.reading.formats.cells.Row;
import java.util.List;

/**
 * The first rows of a sheet, among which its headings are looked for.
 *
 * @param name the sheet's own name
 * @param index its position in the workbook, from 0
 * @param rows its first rows that hold something
 */
public record SheetHead(String name, int index, List<Row> rows) {
  /** How many rows that hold something may stand above the headings. */
  public static final int MOST_ROWS = 100;
}
