package clenchbook.printed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.cli.Clenchbook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sample books' margins and comparisons as printed, read back by PDFBox: each number stands in
 * the files of figures, rounded as people read it, in the row and place it belongs to.
 */
class PrintedFiguresTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "thornfield-metric, 2026-10, October 2026",
    "cedar-hollow-imperial, 2026-10, October 2026"
  })
  void every_printed_number_stands_in_the_figures(String book, String month, String words)
      throws Exception {
    Path copy = folder.resolve(book + ".xlsx");
    Files.copy(Path.of("sample-workbooks", book + ".xlsx"), copy);
    int exit =
        Clenchbook.execute(
            "month-end", copy.toString(), "--month", month, "--out", folder.toString());
    assertTrue(exit == 0 || exit == 1, "exit " + exit);
    Path out = folder.resolve(month);
    assertEquals(
        "",
        String.join(
            "\n",
            Stream.of(MarginsPrinted.faults(out, words), ComparisonsPrinted.faults(out))
                .flatMap(List::stream)
                .toList()));
    change(out.resolve("figures/margins.csv"));
    change(out.resolve("figures/comparisons.csv"));
    assertFalse(MarginsPrinted.faults(out, words).isEmpty(), "a changed figure is noticed");
    assertFalse(ComparisonsPrinted.faults(out).isEmpty(), "a changed figure is noticed");
  }

  /** Another first decimal in the middle line. */
  private static void change(Path table) throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(table));
    String line = lines.get(lines.size() / 2);
    int digit = line.indexOf('.') + 1;
    char other = line.charAt(digit) == '9' ? '0' : (char) (line.charAt(digit) + 1);
    lines.set(lines.size() / 2, line.substring(0, digit) + other + line.substring(digit + 1));
    Files.write(table, lines);
  }
}
