package clenchbook.samples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The small German sample: its headings are German, and nothing in it needs a word of its own. */
class LindenauSmallTest {
  private static final Path FILE = Path.of("sample-workbooks", LindenauSmall.FILE);

  private static ReadResult read() throws IOException {
    return BookReader.read(FILE, ReadOptions.of(Locale.GERMANY));
  }

  @Test
  void the_committed_book_is_what_the_generator_makes() throws IOException {
    assertArrayEquals(SampleWorkbooks.lindenau(), Files.readAllBytes(FILE));
  }

  @Test
  void german_headings_and_settings_are_read_without_being_told() throws IOException {
    Book book = read().book();
    assertEquals(List.of(), read().problems());
    assertEquals("de", book.settings().text(Setting.TAX_REGIME));
    assertEquals("EUR", book.settings().currency());
    assertEquals(14, book.horses().size());
    assertEquals(6, book.assets().size());
  }

  /** Small enough to be looked through, big enough to be a year. */
  @Test
  void a_whole_year_of_a_small_round() throws IOException {
    Book book = read().book();
    assertTrue(book.visits().size() > 80 && book.visits().size() < 130);
    assertEquals(
        12, book.visits().stream().map(visit -> visit.date().getMonth()).distinct().count());
    assertTrue(book.trips().size() > 40);
  }
}
