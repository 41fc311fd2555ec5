package clenchbook.commandlife;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What the program wrote, read back as a stranger to it would. */
final class WrittenFiles {
  private static final CSVFormat CSV =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
  private static final Pattern TABLE = Pattern.compile("<table>.*?</table>", Pattern.DOTALL);
  private static final Pattern ROW = Pattern.compile("<tr( class=\"total\")?>(<td.*?)</tr>");
  private static final Pattern MONEY = Pattern.compile(">(−?)£([0-9,]+\\.[0-9]{2})<");

  private WrittenFiles() {}

  static List<Map<String, String>> csv(Path file) {
    List<Map<String, String>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(Files.readString(file), CSV)) {
      for (CSVRecord row : parser) {
        rows.add(row.toMap());
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static int cents(Map<String, String> row, String column) {
    return new BigDecimal(row.getOrDefault(column, "")).movePointRight(2).intValueExact();
  }

  /** The digest of every file under a folder or of one file, by path; none where nothing is. */
  static Map<String, String> digests(Path root) {
    if (!Files.exists(root)) {
      return Map.of();
    }
    Map<String, String> digests = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        digests.put(root.relativize(file).toString(), digest(Files.readAllBytes(file)));
      }
      return digests;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Tables of a page whose last row, All, is not the sum of the others; how many were added up. */
  static int addTables(String page, List<String> wrong) {
    int tables = 0;
    for (String table : TABLE.matcher(page).results().map(match -> match.group()).toList()) {
      if (table.contains("<tr class=\"total\"><td>All</td>")) {
        tables++;
        if (sum(table, false) != sum(table, true)) {
          wrong.add(table);
        }
      }
    }
    return tables;
  }

  private static int sum(String table, boolean total) {
    return ROW.matcher(table)
        .results()
        .filter(row -> (row.group(1) != null) == total)
        .mapToInt(row -> money(row.group(2)))
        .sum();
  }

  private static int money(String row) {
    return MONEY
        .matcher(row)
        .results()
        .mapToInt(
            match ->
                new BigDecimal(
                        (match.group(1).isEmpty() ? "" : "-") + match.group(2).replace(",", ""))
                    .movePointRight(2)
                    .intValueExact())
        .sum();
  }
}
