package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Book;
import clenchbook.book.Counted;
import clenchbook.book.SheetControl;
import clenchbook.book.Visit;
import clenchbook.problem.ProblemKind;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that other writers wrote, by src/test/node/write-books.js. */
class BooksByOthersTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "clenchbook", "reading", "npm");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "exceljs.xlsx",
        "exceljs-1904.xlsx",
        "exceljs-streamed.xlsx",
        "sheetjs.xlsx",
        "sheetjs-shared.xlsx",
        "xlsx-populate.xlsx",
        "xlsx-populate-locked.xlsx",
        "excel4node.xlsx",
      })
  void a_book_of_another_writer_is_read_cell_for_cell(String file) throws IOException {
    ReadOptions options = new ReadOptions(Optional.of("hoof"), Locale.UK, rows -> {});
    ReadResult result = BookReader.read(FOLDER.resolve(file), options);
    Book book = result.book();
    Visit first = book.visits().get(0);
    assertEquals(LocalDate.of(2026, 3, 14), first.date());
    assertEquals(
        List.of(new Counted("0", Optional.of(2)), new Counted("00", Optional.of(2))), first.size());
    assertEquals(Optional.of(new BigDecimal("45")), first.totalMin());
    assertEquals(Optional.of(new BigDecimal("85.1")), first.charge());
    assertEquals("Zoë & <co>", first.notes());
    assertEquals("0", book.visits().get(1).size().get(0).name());
    assertEquals(Optional.of(new BigDecimal("90")), book.visits().get(1).charge());
    assertEquals(
        List.of(new SheetControl("Visits", 3, 0), new SheetControl("Settings", 1, 0)),
        book.controls());
    assertEquals("GBP", book.settings().currency());
    assertEquals(1, result.problems().size());
    assertEquals(ProblemKind.FORMULA_WITHOUT_VALUE, result.problems().get(0).kind());
    assertEquals("Visits!G5", result.problems().get(0).at().toString());
  }

  /** The binary format always stores a result, so that the formula without one counts as 0. */
  @Test
  void a_binary_book_of_another_writer_is_read() throws IOException {
    ReadResult result = BookReader.read(FOLDER.resolve("sheetjs.xls"), ReadOptions.of(Locale.UK));
    Visit first = result.book().visits().get(0);
    assertEquals(LocalDate.of(2026, 3, 14), first.date());
    assertEquals(Optional.of(new BigDecimal("45")), first.totalMin());
    assertEquals(Optional.of(new BigDecimal("85.1")), first.charge());
    assertEquals("Zoë & <co>", first.notes());
    assertEquals(3, result.book().visits().size());
  }

  /** This writer keeps no formats in an OpenDocument, so that days are bare numbers, and said. */
  @Test
  void an_open_document_without_formats_is_read_with_warnings() throws IOException {
    ReadResult result = BookReader.read(FOLDER.resolve("sheetjs.ods"), ReadOptions.of(Locale.UK));
    assertEquals(LocalDate.of(2026, 3, 14), result.book().visits().get(0).date());
    assertEquals(
        List.of(ProblemKind.DATE_WITHOUT_FORMAT),
        result.problems().stream().map(problem -> problem.kind()).distinct().toList());
    assertEquals(Optional.of(new BigDecimal("85.1")), result.book().visits().get(0).charge());
  }
}
