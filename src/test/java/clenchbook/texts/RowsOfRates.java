package clenchbook.texts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of the program's rate tables, with the texts that some of them name. */
final class RowsOfRates {
  private static final Path TABLES = Path.of("src/main/resources/rates");
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get();

  private RowsOfRates() {}

  /**
   * A row.
   *
   * @param file its table
   * @param name what files call it
   * @param value its value
   * @param key the key of its text, where it names one
   */
  record Row(Path file, String name, String value, Optional<String> key) {}

  /** Those of every table. */
  static List<Row> all() {
    List<Row> rows = new ArrayList<>();
    try (Stream<Path> files = Files.walk(TABLES)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".csv")).sorted().toList()) {
        rows.addAll(of(file));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return rows;
  }

  private static List<Row> of(Path file) throws IOException {
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
      return parser.stream().map(record -> row(file, record)).toList();
    }
  }

  private static Row row(Path file, CSVRecord record) {
    Optional<String> key =
        record.isMapped("text")
            ? Optional.of(record.get("text")).filter(text -> !text.isEmpty())
            : Optional.empty();
    return new Row(file, record.get("name"), record.get("value"), key);
  }
}
