package clenchbook.commands.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.commands.SmallFolderBook;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The year of a month's end is the tax year of its year's end. */
class BookYearTest {
  private static final String HEADING =
      "code,name,value,unit,from,to,source,section,checked\n" + "starts,First day of the tax year,";
  @TempDir Path folder;

  private LocalDate start(String regime, LocalDate day) throws IOException {
    SmallFolderBook book =
        SmallFolderBook.in(folder)
            .sheet("Settings", "Setting,Value\nCountry,GB\nCurrency,GBP\nTax regime," + regime);
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    OpenBook open =
        OpenBook.read(
            book.path(),
            new Machine(LocalDate.of(2026, 12, 1), Locale.UK, Optional.empty()),
            new Terminal(nowhere, nowhere, false));
    return BookYear.of(open).holding(day);
  }

  @ParameterizedTest
  @CsvSource({
    "au, 2026-03-31, 2025-07-01",
    "uk, 2026-03-31, 2025-04-06",
    "us, 2026-03-31, 2026-01-01",
    "atlantis, 2026-03-31, 2026-01-01"
  })
  void the_books_regime_says_when_its_year_begins(String regime, LocalDate day, LocalDate first)
      throws IOException {
    assertEquals(first, start(regime, day));
  }

  @Test
  void rates_beside_the_book_may_move_it_and_bad_ones_move_nothing() throws IOException {
    Path rates = folder.resolve("rates/us/year.csv");
    Files.createDirectories(rates.getParent());
    Files.writeString(rates, HEADING + "10-01,day,2019-01-01,2026-12-31,a preparer,,\n");
    assertEquals(LocalDate.of(2025, 10, 1), start("us", LocalDate.of(2026, 3, 31)));
    Files.writeString(rates, HEADING + "soon,day,2019-01-01,2026-12-31,a preparer,,\n");
    assertEquals(LocalDate.of(2026, 1, 1), start("us", LocalDate.of(2026, 3, 31)));
  }
}
