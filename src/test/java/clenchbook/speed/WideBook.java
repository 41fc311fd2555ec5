package clenchbook.speed;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;

/** A sheet of many rows and twenty columns: days, texts few and many, numbers, moneys, truths. */
final class WideBook {
  static final int COLUMNS = 20;
  private static final LocalDate FIRST_DAY = LocalDate.of(1986, 1, 1);

  private WideBook() {}

  /** Writes one. */
  static void write(Path file, int rows) throws IOException {
    try (SheetFile book = new SheetFile(file)) {
      String[] headings = new String[COLUMNS];
      for (int column = 0; column < COLUMNS; column++) {
        headings[column] = "Heading " + (column + 1);
      }
      book.sheet("Wide", headings);
      for (int row = 0; row < rows; row++) {
        book.row(row(row));
      }
    }
  }

  private static Object[] row(int row) {
    Object[] cells = new Object[COLUMNS];
    for (int column = 0; column < COLUMNS; column++) {
      cells[column] = cell(row, column);
    }
    return cells;
  }

  private static Object cell(int row, int column) {
    return switch (column) {
      case 0, 10 -> FIRST_DAY.plusDays(row % 14_000);
      case 1, 2, 11, 12 -> "Word " + column + " " + row % 97;
      case 3, 13 -> "Note " + column + " of row " + row % 20_000;
      case 4, 5, 14, 15 -> BigDecimal.valueOf(row * 37L % 100_000, 2);
      case 6, 16 -> row % 3 == 0;
      default -> row * (column + 1) % 9_973;
    };
  }
}
