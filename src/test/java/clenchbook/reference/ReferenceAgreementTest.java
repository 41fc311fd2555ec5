package clenchbook.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The program against plain arithmetic: every figure of every job, line, tax and balance. */
class ReferenceAgreementTest {
  @TempDir Path folder;

  @ParameterizedTest(name = "{0} with {1}")
  @MethodSource("books")
  void a_small_book_agrees_to_the_cent(String name, Map<String, String> settings)
      throws IOException {
    Path book = SmallBooks.write(name, settings, folder.resolve("book.xlsx"));
    for (int month = 2; month <= 4; month++) {
      assertEquals(List.of(), disagreements(book, YearMonth.of(2026, month)), "month " + month);
    }
  }

  @Test
  void a_log_and_nothing_else_agrees_to_the_cent() throws IOException {
    Path book = SmallBooks.write("bare", Map.of(), folder.resolve("bare.xlsx"));
    assertEquals(List.of(), disagreements(book, YearMonth.of(2026, 3)));
  }

  static Stream<Arguments> books() {
    return Stream.of("alder-metric", "birch-imperial", "crux")
        .flatMap(name -> variations().map(settings -> Arguments.of(name, settings)));
  }

  private static Stream<Map<String, String>> variations() {
    return Stream.of(
        Map.of(),
        Map.of("Tax on", "line"),
        Map.of("Tax on", "invoice"),
        Map.of("Prices include tax", "no"),
        Map.of("Prices include tax", "yes", "Tax on", "line"),
        Map.of("Prices include tax", "yes", "Tax on", "invoice"),
        Map.of("Tax regime", "uk", "Tax number", ""),
        Map.of("Tax regime", "plain", "Tax number", ""),
        Map.of("Input tax recovered", "no", "Yearly overheads", ""),
        Map.of("Input tax recovered", "yes", "Yearly overheads", "9999.99"),
        Map.of("Gas cost per kg", "", "Gas cost per gallon", "", "Gas cost per lb", "1.07"),
        Map.of("Gas burn kg per hour", "", "Gas burn lb per hour", "", "Forge setup min", ""),
        Map.of(
            "Hourly wage", "", "Helper wage", "", "Hours per year", "", "Sundries per horse", ""),
        Map.of("Vehicle cost per distance", "0.617", "Forge setup gas min", "", "Terms days", ""));
  }

  @ParameterizedTest
  @CsvSource({
    "thornfield-metric.xlsx, 2026-10",
    "thornfield-metric.xlsx, 2026-04",
    "cedar-hollow-imperial.xlsx, 2026-10",
    "cedar-hollow-imperial.xlsx, 2026-01"
  })
  void a_sample_month_agrees_to_the_cent(String name, String month) throws IOException {
    Path book = Path.of("sample-workbooks", name);
    assertEquals(List.of(), disagreements(book, YearMonth.parse(month)));
  }

  private static List<String> disagreements(Path book, YearMonth month) throws IOException {
    return Disagreements.of(new ReferenceMonth(book, month), ProgramMonth.of(book, month));
  }
}
