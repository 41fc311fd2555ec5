package clenchbook.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.samples.SampleBook.Tables;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

class SampleWorkbooksTest {
  private static final Path FOLDER = Path.of("sample-workbooks");

  @Test
  void the_committed_books_are_what_the_generator_makes() throws IOException {
    for (Map.Entry<String, Tables> sample : SampleBook.all().entrySet()) {
      Map<String, byte[]> made = parts(SampleWorkbooks.bytes(sample.getValue()));
      Map<String, byte[]> kept = parts(Files.readAllBytes(FOLDER.resolve(sample.getKey())));
      assertEquals(made.keySet(), kept.keySet());
      made.forEach(
          (name, bytes) ->
              assertTrue(Arrays.equals(bytes, kept.get(name)), sample.getKey() + " " + name));
    }
  }

  @Test
  void each_book_has_fourteen_months_and_at_least_1200_visits() {
    for (Tables tables : SampleBook.all().values()) {
      List<Map<String, Object>> visits = SampleBook.tabs(tables).get(0).rows;
      Set<String> months = new HashSet<>();
      for (Map<String, Object> visit : visits) {
        if (visit.get("Date") instanceof LocalDate day) {
          months.add(day.toString().substring(0, 7));
        }
      }
      assertEquals(14, months.size());
      assertTrue(months.contains("2025-09") && months.contains("2026-10"));
      assertTrue(visits.size() >= 1200, "only " + visits.size());
    }
  }

  @Test
  void together_the_books_use_every_column() {
    Map<String, Set<String>> unused = new TreeMap<>();
    for (Tables tables : SampleBook.all().values()) {
      for (Tab tab : SampleBook.tabs(tables)) {
        Set<String> blank = new HashSet<>(tab.headings);
        tab.rows.forEach(row -> blank.removeAll(row.keySet()));
        unused.merge(tab.name, blank, SampleWorkbooksTest::both);
      }
    }
    unused.values().removeIf(Set::isEmpty);
    assertEquals(Map.of(), unused);
  }

  /** Ranges for invented data: common practice, no source. */
  @Test
  void a_practitioner_must_not_laugh() {
    for (Tables tables : SampleBook.all().values()) {
      List<Map<String, Object>> rows = SampleBook.tabs(tables).get(0).rows;
      double shoes = sum(rows, "Shoes");
      double lost = sum(rows, "Lost");
      double paid = rows.stream().filter(row -> row.containsKey("Paid")).count();
      assertTrue(lost / shoes > 0.01 && lost / shoes < 0.03, "lost " + lost / shoes);
      assertTrue(
          paid / rows.size() > 0.5 && paid / rows.size() < 0.7, "paid " + paid / rows.size());
      assertTrue(perShoe(rows, "cold") - perShoe(rows, "hot") > 1, "hot saves minutes");
      assertTrue(perShoe(rows, "cold") - perShoe(rows, "hot") < 3, "but not too many");
    }
  }

  private static double perShoe(List<Map<String, Object>> rows, String shaping) {
    List<Map<String, Object>> sets =
        rows.stream()
            .filter(row -> row.get("Work").equals("Full set") && shaping.equals(row.get("Shaping")))
            .filter(row -> row.containsKey("Shape min"))
            .toList();
    return sum(sets, "Shape min") / sum(sets, "Shoes");
  }

  private static double sum(List<Map<String, Object>> rows, String column) {
    return rows.stream()
        .map(row -> row.get(column))
        .filter(Integer.class::isInstance)
        .mapToDouble(value -> (Integer) value)
        .sum();
  }

  private static Set<String> both(Set<String> one, Set<String> other) {
    Set<String> both = new HashSet<>(one);
    both.retainAll(other);
    return both;
  }

  private static Map<String, byte[]> parts(byte[] book) throws IOException {
    Map<String, byte[]> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(book))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }
}
