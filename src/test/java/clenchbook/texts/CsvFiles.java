package clenchbook.texts;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The CSV files below a folder, for comparing those of two runs. */
final class CsvFiles {
  /** The files with words for the farrier, and the columns in which they stand. */
  private static final Map<String, List<String>> WORDS =
      Map.of(
          "problems.csv", List.of("problem", "expected"),
          "payments-to-add.csv", List.of("why"),
          "unmatched.csv", List.of("why"));

  private CsvFiles() {}

  /** Each file's bytes as a text, by its path; all but the farrier's words. */
  static Map<String, String> below(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(each -> each.toString().endsWith(".csv")).toList()) {
        List<String> words = WORDS.getOrDefault(String.valueOf(file.getFileName()), List.of());
        files.put(
            folder.relativize(file).toString(),
            words.isEmpty()
                ? new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
                : without(words, file));
      }
    }
    return files;
  }

  private static String without(List<String> words, Path file) throws IOException {
    StringBuilder rows = new StringBuilder();
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
      List<CSVRecord> all = parser.getRecords();
      List<String> names = all.get(0).toList();
      for (CSVRecord row : all) {
        List<String> kept = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
          boolean word = words.contains(names.get(i)) && row.getRecordNumber() > 1;
          kept.add(word ? "" : row.get(i));
        }
        rows.append(kept).append('\n');
      }
    }
    return rows.toString();
  }
}
