package clenchbook.reading.rows;

import clenchbook.book.SheetControl;
import java.util.HashMap;
import java.util.Map;

/**
 * How the rows of one sheet ended. A row that stands in two tables side by side is one row: held
 * where one of them holds it, else used where one uses it.
 */
final class RowTally {
  /** How a row ended, the weightier further down. */
  enum End {
    IGNORED,
    USED,
    HELD
  }

  private final Map<Integer, Shared> shared = new HashMap<>();
  private int rows;
  private int used;
  private int held;
  private int ignored;

  /** A row of several tables that some of them have not settled. */
  private static final class Shared {
    private int open;
    private End end = End.IGNORED;

    Shared(int open) {
      this.open = open;
    }
  }

  /** Counts a row that so many tables are about to settle; one that none takes is ignored. */
  void row(int number, int tables) {
    rows++;
    if (tables == 0) {
      ignored++;
    } else if (tables > 1) {
      shared.put(number, new Shared(tables));
    }
  }

  /** Takes how a row ended in one of its tables. */
  void end(int number, End end) {
    Shared row = shared.get(number);
    if (row == null) {
      count(end);
      return;
    }
    row.end = row.end.compareTo(end) < 0 ? end : row.end;
    row.open--;
    if (row.open == 0) {
      shared.remove(number);
      count(row.end);
    }
  }

  private void count(End end) {
    switch (end) {
      case IGNORED -> ignored++;
      case USED -> used++;
      case HELD -> held++;
    }
  }

  /** The counts, once the last row is settled; rows = used + held + ignored. */
  SheetControl control(String sheet) {
    if (rows != used + held + ignored) {
      throw new IllegalStateException(
          "rows of %s do not add up: %d = %d + %d + %d"
              .formatted(sheet, rows, used, held, ignored));
    }
    return new SheetControl(sheet, rows, ignored);
  }
}
