package clenchbook.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.cli.Clenchbook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A whole run of the program on the small books: the tables it writes against plain arithmetic. */
class WrittenFiguresTest {
  @TempDir Path folder;

  private final Locale machine = Locale.getDefault();

  /**
   * The bare book has no Settings: without a country of the machine's it would have no currency.
   */
  @BeforeEach
  void in_a_country() {
    Locale.setDefault(Locale.UK);
  }

  @AfterEach
  void as_before() {
    Locale.setDefault(machine);
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-metric", "birch-imperial", "crux", "bare"})
  void every_figure_a_run_writes_agrees_to_the_cent(String name) throws IOException {
    Path book = SmallBooks.write(name, Map.of(), folder.resolve("book.xlsx"));
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
