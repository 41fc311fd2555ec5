package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.texts.BookName;
import clenchbook.texts.TextSource;
import clenchbook.texts.Texts;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sentence names a sheet or heading as it stands in the book. Common practice, no source. */
class NamesOfBookTest {
  private static final TextSource ALL = (language, key) -> Optional.of("{0}");

  @TempDir Path folder;

  private List<String> said(SmallBook book, String... names) throws IOException {
    ReadOptions options =
        new ReadOptions(
            Optional.empty(),
            new Locale("nl", "NL"),
            Optional.empty(),
            ALL,
            language -> {},
            rows -> {});
    Texts texts = BookReader.read(book.write(folder), options).book().settings().texts();
    return Stream.of(names).map(name -> texts.say("any", new BookName(name))).toList();
  }

  @Test
  void a_dutch_book_is_named_by_its_own_words_and_what_it_lacks_by_dutch_ones() throws IOException {
    SmallBook book =
        new SmallBook()
            .sheet("Beslag 2026", "Datum|Paard|Werk|Klant {x}|Prijs")
            .row("Beslag 2026", "2026-10-01", "Bles", "Bekappen", "Anna", 40)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "", "Klant {x}", "Owner")
            .sheet("Instellingen", "Instelling|Waarde")
            .row("Instellingen", "Uurtarief", 60);
    assertEquals(
        List.of("Beslag 2026", "Klant {x}", "Instellingen", "Uurtarief", "Paarden", "Land"),
        said(
            book,
            "Visits",
            "Visits/Owner",
            "Settings",
            "Settings/Hourly wage",
            "Horses",
            "Settings/Country"));
  }

  @Test
  void a_book_with_the_guide_s_names_keeps_them_in_any_language() throws IOException {
    SmallBook book =
        SmallBook.visits("Date|Horse|Work|Owner|Charge")
            .visit("2026-10-01", "Bles", "Bekappen", "Anna", 40);
    assertEquals(
        List.of("Visits", "Charge", "Hourly wage", "Horses"),
        said(book, "Visits", "Visits/Charge", "Settings/Hourly wage", "Horses"));
  }

  @Test
  void no_sheet_of_one_month_names_the_visits_of_all() throws IOException {
    SmallBook book =
        new SmallBook()
            .sheet("Januari", "Datum|Paard|Werk|Klant|Prijs")
            .row("Januari", "2026-01-05", "Bles", "Bekappen", "Anna", 40)
            .sheet("Februari", "Datum|Paard|Werk|Klant|Prijs")
            .row("Februari", "2026-02-05", "Bles", "Bekappen", "Anna", 40);
    assertEquals(List.of("Bezoeken", "Klant"), said(book, "Visits", "Visits/Owner"));
  }

  @Test
  void a_book_of_which_nothing_is_known_is_told_the_words_of_its_language() throws IOException {
    SmallBook book = new SmallBook().sheet("Blad1", "Iets|Anders").row("Blad1", "a", "b");
    assertEquals(List.of("Bezoeken", "Paard"), said(book, "Visits", "Visits/Horse"));
  }
}
