package clenchbook.printed;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The tables under a run's {@code figures/}, read back by name. */
record FigureFiles(Path folder) {
  private static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  List<Map<String, String>> rows(String table) {
    try (Reader reader =
        Files.newBufferedReader(folder.resolve(table + ".csv"), StandardCharsets.UTF_8)) {
      return TABLE.parse(reader).stream().map(CSVRecord::toMap).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The only row with this value in this column. */
  Map<String, String> row(String table, String column, String value) {
    List<Map<String, String>> found =
        rows(table).stream().filter(row -> row.get(column).equals(value)).toList();
    if (found.size() != 1) {
      throw new AssertionError(
          found.size() + " rows of " + table + " have " + column + " " + value);
    }
    return found.get(0);
  }

  /** A file's number as people read it: half-up, with so many decimals; words stay as they are. */
  static String rounded(String cell, int decimals) {
    return number(cell)
        ? new BigDecimal(cell).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
        : cell;
  }

  /** The same without its sign. */
  static String unsigned(String cell, int decimals) {
    return rounded(cell.startsWith("-") ? cell.substring(1) : cell, decimals);
  }

  static String negated(String cell, int decimals) {
    return number(cell)
        ? new BigDecimal(cell).negate().setScale(decimals, RoundingMode.HALF_UP).toPlainString()
        : cell;
  }

  private static boolean number(String cell) {
    return cell.matches("-?[0-9]+([.][0-9]+)?");
  }
}
