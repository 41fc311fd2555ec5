package clenchbook.reading.formats.csv;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A folder of CSV files (RFC 4180 and its relatives), each a sheet named by its file; or one such
 * file.
 */
public final class CsvSource implements TableSource {
  private static final String SUFFIX = ".csv";

  private static final int FEWEST_WITH_PREFIX = 3;

  private final List<Path> files;

  /** Finds the files of a folder; a link that leads out of the folder is no file of it. */
  public CsvSource(Path folder) throws IOException {
    Path real = folder.toRealPath();
    try (Stream<Path> all = Files.list(folder)) {
      files =
          all.filter(file -> name(file).toLowerCase(Locale.ROOT).endsWith(SUFFIX))
              .filter(file -> isOwn(file, real))
              .sorted(Comparator.comparing(CsvSource::name))
              .toList();
    }
    if (files.isEmpty()) {
      throw new UnreadableWorkbook(Message.of("formats.noCsv"));
    }
  }

  private CsvSource(List<Path> files) {
    this.files = files;
  }

  /** Whether a file is a book of one sheet: its name says so and its bytes are a text. */
  public static boolean isOne(Path file) throws IOException {
    if (!name(file).toLowerCase(Locale.ROOT).endsWith(SUFFIX)) {
      return false;
    }
    return CsvForm.isText(file);
  }

  /** A single file as a book of one sheet, named as the file. */
  public static CsvSource one(Path file) {
    return new CsvSource(List.of(file));
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static boolean isOwn(Path file, Path folder) {
    try {
      return Files.isRegularFile(file) && file.toRealPath().startsWith(folder);
    } catch (IOException gone) {
      return false;
    }
  }

  @Override
  public List<String> sheetNames() {
    List<String> names =
        files.stream()
            .map(CsvSource::name)
            .map(name -> name.substring(0, name.length() - SUFFIX.length()))
            .toList();
    int prefix = bookPrefix(names);
    return names.stream().map(name -> name.substring(prefix)).toList();
  }

  /**
   * How long the book's name is that some programs put before each sheet's, as in {@code
   * book-Visits}; 0 where the names share none.
   */
  static int bookPrefix(List<String> names) {
    String first = names.get(0);
    int shared = first.lastIndexOf('-') + 1;
    while (shared > 0) {
      String prefix = first.substring(0, shared);
      boolean all =
          names.stream().allMatch(n -> n.startsWith(prefix) && n.length() > prefix.length());
      if (all) {
        return names.size() >= FEWEST_WITH_PREFIX ? shared : 0;
      }
      shared = first.lastIndexOf('-', shared - 2) + 1;
    }
    return 0;
  }

  @Override
  public boolean countsFrom1904() {
    return false;
  }

  @Override
  public List<MergedCells> rows(int sheet, RowSink sink) throws IOException {
    CsvForm text = CsvForm.of(files.get(sheet));
    CSVFormat format =
        CSVFormat.Builder.create()
            .setDelimiter(text.delimiter())
            .setQuote('"')
            .setIgnoreEmptyLines(false)
            .setLenientEof(true)
            .setTrailingData(true)
            .get();
    try (BufferedReader reader = text.open();
        CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
      for (CSVRecord line : parser) {
        int number = Math.toIntExact(parser.getRecordNumber()) + text.linesAbove();
        List<Cell> cells = cells(line);
        if (number > MOST_ROWS || (!cells.isEmpty() && !sink.take(new Row(number, cells)))) {
          break;
        }
      }
    } catch (UncheckedIOException | IllegalStateException broken) {
      throw new DamagedSheet("the file breaks off: " + broken.getMessage(), broken);
    }
    return List.of();
  }

  private static List<Cell> cells(CSVRecord line) {
    List<Cell> cells = new ArrayList<>(line.size());
    for (int column = 0; column < Math.min(line.size(), MOST_COLUMNS); column++) {
      String text = line.get(column);
      if (!text.isEmpty()) {
        boolean cut = text.length() > Cell.LONGEST_TEXT;
        String kept = cut ? text.substring(0, Cell.LONGEST_TEXT) : text;
        cells.add(new Cell.Text(column, false, kept, cut));
      }
    }
    return cells;
  }

  @Override
  public void close() {
    // Files are opened for one pass only.
  }
}
