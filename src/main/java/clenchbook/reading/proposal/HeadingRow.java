package clenchbook.reading.proposal;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.recognise.TableFinder;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the row of an unread sheet that most likely holds its headings. */
public final class HeadingRow {
  private static final int FARTHEST = 40;
  private static final int BENEATH = 12;

  private HeadingRow() {}

  /**
   * Finds it: nothing but words, and most columns hold something beneath; the first that has nearly
   * as many of these as any.
   *
   * @param rows a sheet's first rows that hold something
   * @return empty where no row can be one
   */
  public static Optional<Row> of(List<Row> rows) {
    int reach = Math.min(FARTHEST, rows.size());
    int most = 0;
    for (int at = 0; at < reach; at++) {
      most = Math.max(most, columns(rows, at));
    }
    for (int at = 0; at < reach; at++) {
      int columns = columns(rows, at);
      if (columns > 1 && columns * 10 >= most * 7) {
        return Optional.of(rows.get(at));
      }
    }
    return Optional.empty();
  }

  /** How many columns of a row of words hold something beneath. */
  private static int columns(List<Row> rows, int at) {
    Row row = rows.get(at);
    if (!TableFinder.mayBeHeadings(row)) {
      return 0;
    }
    Set<Integer> beneath = new HashSet<>();
    rows.subList(at + 1, Math.min(rows.size(), at + 1 + BENEATH))
        .forEach(below -> below.cells().forEach(cell -> beneath.add(cell.column())));
    return (int) row.cells().stream().map(Cell::column).filter(beneath::contains).count();
  }
}
