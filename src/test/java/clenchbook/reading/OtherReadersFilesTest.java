package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The files that other programs test their own reading with, from the folders that the environment
 * variable names; docs/files-of-others.md says where to get them. Each is read or refused in one
 * line: no other exception, no hang. Those of the binary format hold what Apache POI finds in them.
 */
@Tag("demand")
class OtherReadersFilesTest {
  private static final String FOLDERS = "CLENCHBOOK_OTHERS_FILES";
  private static final String A_DAY_OR_TIME = "a day or time";
  private static final int PATIENCE_SECONDS = 20;

  private final ExecutorService readers =
      Executors.newCachedThreadPool(
          task -> {
            Thread thread = new Thread(task);
            thread.setDaemon(true);
            return thread;
          });

  private static List<Path> files(String endings) throws IOException {
    String folders = System.getenv(FOLDERS);
    assumeTrue(folders != null, FOLDERS + " names no folder");
    List<Path> files = new ArrayList<>();
    for (String folder : folders.split(java.io.File.pathSeparator)) {
      try (Stream<Path> all = Files.walk(Path.of(folder))) {
        all.filter(Files::isRegularFile)
            .filter(file -> file.toString().matches("(?i).*\\.(" + endings + ")"))
            .sorted()
            .forEach(files::add);
      }
    }
    assertTrue(files.size() > 100, "only " + files.size() + " files in " + folders);
    return files;
  }

  @Test
  void every_file_is_read_or_refused_in_one_line_within_its_time()
      throws IOException, InterruptedException {
    Map<String, Integer> outcomes = new TreeMap<>();
    List<String> faults = new ArrayList<>();
    List<Path> files = files("xls|xlsx|xlsm|xltx|xlsb|ods|csv");
    for (Path file : files) {
      Future<String> reading = readers.submit(() -> outcome(file));
      try {
        outcomes.merge(reading.get(PATIENCE_SECONDS, TimeUnit.SECONDS), 1, Integer::sum);
      } catch (TimeoutException hang) {
        faults.add(file + " takes over " + PATIENCE_SECONDS + " s");
      } catch (ExecutionException thrown) {
        faults.add(file + ": " + thrown.getCause());
      }
    }
    System.out.println(files.size() + " files of other readers: " + outcomes);
    assertEquals(List.of(), faults);
  }

  private static String outcome(Path file) throws IOException {
    try {
      BookReader.read(file, ReadOptions.of(Locale.UK));
      return "a workbook";
    } catch (UnreadableWorkbook refusal) {
      assertEquals(
          1, InEnglish.said(refusal.message()).lines().count(), InEnglish.said(refusal.message()));
      return InEnglish.said(refusal.message()).replaceAll("'.*'", "'…'");
    }
  }

  @Test
  void every_binary_book_holds_what_apache_poi_finds_in_it() throws IOException {
    int books = 0;
    int cells = 0;
    List<String> differences = new ArrayList<>();
    for (Path file : files("xls")) {
      try (InputStream stream = Files.newInputStream(file);
          HSSFWorkbook book = new HSSFWorkbook(stream);
          TableSource ours = TableFile.open(file, Optional.empty())) {
        books++;
        for (int sheet = 0; sheet < ours.sheetNames().size(); sheet++) {
          String name = ours.sheetNames().get(sheet);
          Map<String, String> theirs = theirs(book, name);
          cells += theirs.size();
          ours(ours, sheet)
              .ifPresent(own -> compare(file.getFileName() + " " + name, own, theirs, differences));
        }
      } catch (IOException | RuntimeException unreadable) {
        // One of the two can't read it: the other test says what becomes of it.
      }
    }
    System.out.println(
        books + " binary books, " + cells + " cells, " + differences.size() + " different");
    assertEquals(List.of(), differences);
  }

  /** What Apache POI does not find, such as the results of older formulas, may be there. */
  private static void compare(
      String where, Map<String, String> ours, Map<String, String> theirs, List<String> told) {
    theirs.forEach(
        (place, value) -> {
          String own = ours.getOrDefault(place, "nothing");
          boolean dayOrTime = own.equals(A_DAY_OR_TIME) && value.matches("-?[\\d.E-]+");
          if (!own.equals(value) && !dayOrTime) {
            told.add(where + " " + place + ": " + own + ", POI " + value);
          }
        });
  }

  /** The cells of a sheet; empty for one that breaks off. */
  private static Optional<Map<String, String>> ours(TableSource source, int sheet)
      throws IOException {
    Map<String, String> cells = new TreeMap<>();
    try {
      source.rows(
          sheet,
          row -> {
            row.cells().forEach(cell -> cells.put(at(row.number(), cell.column()), shown(cell)));
            return true;
          });
      return Optional.of(cells);
    } catch (DamagedSheet brokenOff) {
      return Optional.empty();
    }
  }

  private static String at(int row, int column) {
    return "row " + row + " column " + column;
  }

  private static String shown(Cell cell) {
    if (cell instanceof Cell.Number number) {
      return number.decimal().map(value -> "" + value.doubleValue()).orElse("no number");
    }
    boolean time = cell instanceof Cell.Moment || cell instanceof Cell.Span;
    return time ? A_DAY_OR_TIME : cell.shown();
  }

  private static Map<String, String> theirs(HSSFWorkbook book, String sheet) {
    Map<String, String> cells = new TreeMap<>();
    for (org.apache.poi.ss.usermodel.Row row : book.getSheet(sheet)) {
      for (org.apache.poi.ss.usermodel.Cell cell : row) {
        String shown = shown(cell);
        if (!shown.isEmpty()) {
          cells.put(at(row.getRowNum() + 1, cell.getColumnIndex()), shown);
        }
      }
    }
    return cells;
  }

  private static String shown(org.apache.poi.ss.usermodel.Cell cell) {
    CellType type = cell.getCellType();
    return switch (type == CellType.FORMULA ? cell.getCachedFormulaResultType() : type) {
      case STRING -> {
        String text = cell.getRichStringCellValue().getString();
        yield text.substring(0, Math.min(text.length(), Cell.LONGEST_TEXT));
      }
      case NUMERIC -> {
        String raw = Double.toString(cell.getNumericCellValue());
        yield shown(new Cell.Number(0, false, raw, CellFormat.GENERAL));
      }
      case BOOLEAN -> cell.getBooleanCellValue() ? "TRUE" : "FALSE";
      case ERROR -> FormulaError.forInt(cell.getErrorCellValue()).getString();
      default -> "";
    };
  }
}
