package clenchbook.reading;

import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.TableSource;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The program's reading alone, for measuring: every cell of a workbook typed and handed out, none
 * kept. Prints how many of each type there were.
 */
public final class CellsPass {
  private long days;
  private long numbers;
  private long texts;
  private long others;

  private CellsPass() {}

  /** {@code CellsPass FILE} */
  public static void main(String[] args) throws IOException {
    CellsPass pass = new CellsPass();
    try (TableSource book = TableFile.open(Path.of(args[0]), Optional.empty())) {
      for (int sheet = 0; sheet < book.sheetNames().size(); sheet++) {
        book.rows(
            sheet,
            row -> {
              row.cells().forEach(pass::look);
              return true;
            });
      }
    }
    System.out.println(
        pass.days
            + " days, "
            + pass.numbers
            + " numbers, "
            + pass.texts
            + " texts, "
            + pass.others
            + " others");
  }

  private void look(Cell cell) {
    if (cell instanceof Cell.Moment) {
      days++;
    } else if (cell instanceof Cell.Number number) {
      numbers += number.raw().isEmpty() ? 0 : 1;
    } else if (cell instanceof Cell.Text text) {
      texts += text.text().isEmpty() ? 0 : 1;
    } else {
      others++;
    }
  }
}
