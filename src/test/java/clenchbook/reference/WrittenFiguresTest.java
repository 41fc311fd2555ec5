package clenchbook.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.cli.Clenchbook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A whole run of the program on the small books: the tables it writes against plain arithmetic. */
class WrittenFiguresTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"alder-metric", "birch-imperial", "crux", "bare"})
  void every_figure_a_run_writes_agrees_to_the_cent(String name) throws IOException {
    // Without Settings and on a machine without a country no currency would be known.
    Map<String, String> currency = name.equals("bare") ? Map.of("Currency", "GBP") : Map.of();
    Path book = SmallBooks.write(name, currency, folder.resolve("book.xlsx"));
    Path out = folder.resolve("out");
    int exit =
        Clenchbook.execute(
            "month-end", book.toString(), "--month", "2026-03", "--out", out.toString());
    assertTrue(exit == 0 || exit == 1, "exit " + exit);
    ReferenceMonth plain = new ReferenceMonth(book, YearMonth.of(2026, 3));
    assertEquals(
        List.of(), WrittenFigures.disagreements(out.resolve("2026-03").resolve("figures"), plain));
  }
}
