package clenchbook.reading;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.recognise.SheetHead;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Gathers the first rows of every sheet. */
final class SheetHeads {
  private static final int WIDEST_HEAD = 600;

  private SheetHeads() {}

  /** The first rows of every sheet; a sheet that breaks off gives what it has. */
  static List<SheetHead> of(TableSource source) throws IOException {
    List<SheetHead> heads = new ArrayList<>();
    List<String> names = source.sheetNames();
    for (int index = 0; index < names.size(); index++) {
      List<Row> rows = new ArrayList<>();
      try {
        source.rows(index, row -> rows.add(narrow(row)) && rows.size() < SheetHead.MOST_ROWS);
      } catch (DamagedSheet damaged) {
        // Said when the sheet is read; one that is not needed may be as it likes.
      }
      heads.add(new SheetHead(names.get(index), index, List.copyOf(rows)));
    }
    return heads;
  }

  private static Row narrow(Row row) {
    List<Cell> cells = row.cells().subList(0, Math.min(WIDEST_HEAD, row.cells().size()));
    return new Row(row.number(), List.copyOf(cells));
  }
}
