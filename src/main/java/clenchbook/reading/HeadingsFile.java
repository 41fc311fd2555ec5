package clenchbook.reading;

import clenchbook.book.SheetKind;
import clenchbook.book.understood.Understood;
import clenchbook.problem.Problem;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.reading.cells.TableSense;
import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.recognise.SheetHead;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.recognise.SheetRecognizer;
import clenchbook.reading.rows.HeadingsRows;
import clenchbook.reading.rows.SheetRows;
import clenchbook.reading.rows.SheetTables;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The file that serves as the sheet Headings where a book has none: beside it, under the book's own
 * name, or wherever the farrier says.
 */
public final class HeadingsFile {
  private static final String ENDING = ".headings.csv";

  private HeadingsFile() {}

  /** Where a book's own file of headings lies, whether it is there or not. */
  public static Path beside(Path book) {
    Path file = book.toAbsolutePath();
    String name = String.valueOf(file.getFileName());
    int dot = Files.isDirectory(file) ? -1 : name.lastIndexOf('.');
    return file.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ENDING);
  }

  /** The file that counts for a book; empty where there is none. */
  static Optional<Path> of(Path book, Optional<Path> given) {
    return given.or(() -> Optional.of(beside(book)).filter(Files::isRegularFile));
  }

  /**
   * Reads the rows of a file of headings.
   *
   * @throws UnreadableWorkbook where it is none, with the reason in one line
   */
  static void read(
      Path file,
      SheetRecognizer plain,
      ReadingRules rules,
      HeadingsRows rows,
      Consumer<Problem> problems)
      throws IOException {
    try (TableSource source = TableFile.open(file, Optional.empty())) {
      List<Row> first = new ArrayList<>();
      source.rows(0, row -> first.add(row) && first.size() < SheetHead.MOST_ROWS);
      SheetHead head = new SheetHead(String.valueOf(file.getFileName()), 0, first);
      SheetLayout layout =
          plain
              .layout(head, SheetKind.HEADINGS)
              .orElseThrow(
                  () -> new UnreadableWorkbook(Message.of("formats.headingsFile.noHeadings")));
      SheetTables tables =
          new SheetTables(
              List.of(layout),
              Integer.MAX_VALUE,
              (row, titles, running) -> List.of(),
              each ->
                  new SheetRows(each, rules, TableSense.none(), List.of(), problems, rows::add));
      source.rows(
          0,
          row -> {
            tables.take(row);
            return true;
          });
      tables.finish();
    } catch (UnreadableWorkbook unreadable) {
      throw unreadable(file, unreadable.message(), unreadable);
    } catch (DamagedSheet damaged) {
      throw unreadable(file, Message.of("formats.headingsFile.breaksOff"), damaged);
    }
  }

  private static UnreadableWorkbook unreadable(Path file, Message why, IOException cause) {
    return new UnreadableWorkbook(
        Message.of("formats.headingsFile.unreadable", name(file), why), cause);
  }

  /** The name under which a run tells of the file; see {@link Understood#headingsFile}. */
  static String name(Path file) {
    return String.valueOf(file.getFileName());
  }
}
