package clenchbook.book;

import clenchbook.problem.CellRef;
import java.util.Map;

/**
 * The row a record was read from. Rows order by sheet position, then row.
 *
 * @param sheet the sheet's own name
 * @param sheetIndex the sheet's position in the workbook, from 0
 * @param row the row as the spreadsheet numbers it, from 1
 * @param columns the column letters by canonical heading, shared by all rows of the sheet
 */
public record SourceRow(String sheet, int sheetIndex, int row, Map<String, String> columns)
    implements Comparable<SourceRow> {

  /**
   * The cell under a heading.
   *
   * @param heading the canonical heading, such as {@code Owner}
   * @return its cell, also when blank; without a column when the sheet lacks the heading
   */
  public CellRef at(String heading) {
    return new CellRef(sheet, row, columns.getOrDefault(heading, ""));
  }

  /**
   * Whether the sheet has a heading.
   *
   * @param heading the canonical heading
   * @return true when a column stands under it
   */
  public boolean has(String heading) {
    return columns.containsKey(heading);
  }

  @Override
  public int compareTo(SourceRow other) {
    int bySheet = Integer.compare(sheetIndex, other.sheetIndex);
    return bySheet != 0 ? bySheet : Integer.compare(row, other.row);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SourceRow that && sheetIndex == that.sheetIndex && row == that.row;
  }

  @Override
  public int hashCode() {
    return 31 * sheetIndex + row;
  }
}
