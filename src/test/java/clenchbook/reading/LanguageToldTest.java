package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.texts.TextFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong while rows are read is said in the book's language, not the machine's. */
class LanguageToldTest {
  private static final int MANY = 5_000;

  @TempDir Path folder;

  @Test
  void the_language_of_the_settings_is_told_once_and_before_the_rows_are_read() throws IOException {
    SmallBook book =
        SmallBook.visits("Date|Horse|Work|Owner|Charge")
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Language", "fr");
    for (int row = 0; row < MANY; row++) {
      book.visit("2026-10-01", "Bles", "Trim", "Anna", 40);
    }
    List<String> told = new ArrayList<>();
    ReadOptions options =
        new ReadOptions(
            Optional.empty(),
            Locale.UK,
            Optional.empty(),
            TextFiles.OWN,
            texts -> told.add(texts.language()),
            rows -> told.add(rows + " rows"));
    BookReader.read(book.write(folder), options);
    assertEquals(List.of("fr", "5000 rows"), told);
  }
}
