package clenchbook.reading.formats.cells;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;

/** An opened file as sheets of rows. Not safe for use by several threads. */
public interface TableSource extends Closeable {
  /** The most rows and columns of a sheet; cells beyond are not read. */
  int MOST_ROWS = 1_048_576;

  /** See {@link #MOST_ROWS}. */
  int MOST_COLUMNS = 16_384;

  /** The sheets' names, in the file's order. */
  List<String> sheetNames();

  /** Whether the book counts its days from 1904; else from 1900. */
  boolean countsFrom1904();

  /** Whether a sheet is hidden from who looks at the book. */
  default boolean isHidden(int sheet) {
    return false;
  }

  /**
   * Hands on the rows of one sheet from the top. May be called again for the same sheet.
   *
   * @param sheet the place of the sheet in {@link #sheetNames()}
   * @param sink takes the rows until it says that it wants no more
   * @return the merged blocks that span several rows, as far as the sheet was read
   * @throws DamagedSheet when the sheet breaks off
   * @throws UnreadableWorkbook when the file asks for more than a workbook may, or is hostile
   * @throws IOException when the file can't be read any more
   */
  List<MergedCells> rows(int sheet, RowSink sink) throws IOException;
}
