package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.SmallBook;
import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.Vocabulary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A book of which every heading's meaning is known, to be renamed.
 *
 * @param name for messages
 * @param sheets its sheets, those of settings and the farrier's own words left out
 */
record PlainBook(String name, List<Sheet> sheets) {
  private static final int MOST_ROWS = 150;
  private static final Path SAMPLES = Path.of("sample-workbooks");
  private static final Path SMALL = Path.of("src", "test", "resources", "renamed-books");

  /**
   * A sheet.
   *
   * @param title rows above the headings
   * @param meanings what each column means; empty for one that is not counted
   * @param headings what stands over it
   */
  record Sheet(
      SheetKind kind,
      String name,
      List<Object[]> title,
      List<String> meanings,
      List<String> headings,
      List<Object[]> rows) {}

  /** The two large samples, the small German one, and a small book in each language. */
  static List<PlainBook> all() {
    return Stream.concat(
            Stream.of("thornfield-metric", "cedar-hollow-imperial", "lindenau-small")
                .map(PlainBook::sample),
            Stream.of("en", "de", "fr", "es", "nl").map(PlainBook::small))
        .toList();
  }

  static PlainBook sample(String name) {
    List<Sheet> sheets = new ArrayList<>();
    try (TableSource source = TableFile.open(SAMPLES.resolve(name + ".xlsx"), Optional.empty())) {
      List<String> names = source.sheetNames();
      for (int index = 0; index < names.size(); index++) {
        List<Row> rows = new ArrayList<>();
        source.rows(index, row -> rows.add(row) && rows.size() < MOST_ROWS);
        sheet(names.get(index), rows).ifPresent(sheets::add);
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return new PlainBook(name, sheets);
  }

  private static Optional<Sheet> sheet(String name, List<Row> rows) {
    List<SheetKind> called = Vocabulary.load().sheetsCalled(name);
    Optional<Row> headings = HeadingRow.of(rows);
    boolean other =
        called.size() != 1
            || List.of(SheetKind.SETTINGS, SheetKind.HEADINGS, SheetKind.STRAIN)
                .contains(called.get(0));
    if (other || headings.isEmpty()) {
      return Optional.empty();
    }
    SheetWords words = Vocabulary.load().of(called.get(0));
    int at = rows.indexOf(headings.get());
    int width = headings.get().cells().size();
    List<String> written = headings.get().cells().stream().map(Cell::shown).toList();
    List<String> meanings = written.stream().map(one -> words.heading(one).orElse("")).toList();
    return Optional.of(
        new Sheet(
            called.get(0),
            name,
            rows.subList(0, at).stream().map(row -> plain(row, width)).toList(),
            meanings,
            written,
            rows.subList(at + 1, rows.size()).stream().map(row -> plain(row, width)).toList()));
  }

  private static Object[] plain(Row row, int width) {
    Object[] cells = new Object[width];
    for (Cell cell : row.cells()) {
      if (cell.column() < width) {
        cells[cell.column()] = plain(cell);
      }
    }
    return cells;
  }

  private static Object plain(Cell cell) {
    if (cell instanceof Cell.Number number) {
      return number.format().code().isEmpty()
          ? number.decimal().orElse(BigDecimal.ZERO)
          : new SmallBook.Styled(number.raw(), number.format().code());
    }
    if (cell instanceof Cell.Moment moment) {
      return moment.at().toLocalDate();
    }
    if (cell instanceof Cell.Span span) {
      return LocalTime.ofSecondOfDay(span.length().toSeconds() % 86_400);
    }
    return cell.shown();
  }

  static PlainBook small(String language) {
    List<Sheet> sheets = new ArrayList<>();
    try {
      String text = Files.readString(SMALL.resolve(language + ".txt"));
      for (String part : text.split("(?m)^# ")) {
        if (!part.isBlank()) {
          sheets.add(small(part.lines().toList()));
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return new PlainBook("small " + language, sheets);
  }

  private static Sheet small(List<String> lines) {
    List<String> headings = List.of(lines.get(1).split("\\|"));
    List<Object[]> rows =
        lines.subList(2, lines.size()).stream()
            .map(line -> Arrays.stream(line.split("\\|", -1)).map(PlainBook::typed).toArray())
            .toList();
    SheetKind kind = Vocabulary.load().canonicalSheet(lines.get(0)).orElseThrow();
    return new Sheet(kind, lines.get(0), List.of(), headings, headings, rows);
  }

  private static Object typed(String cell) {
    return cell.matches("\\d{1,4}") && !cell.startsWith("0") || cell.equals("0")
        ? (Object) new BigDecimal(cell)
        : cell;
  }

  /** Its headings, for a message. */
  String described() {
    return sheets.stream()
        .map(sheet -> sheet.name() + " " + sheet.headings())
        .collect(Collectors.joining("\n"));
  }
}
