package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Visit;
import clenchbook.texts.InEnglish;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that farriers write where a number or a day is expected. */
class WordsInCellsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private ReadResult charged(String charge, Locale machine) {
    return SmallBook.visits("Date|Owner|Horse|Work|Charge")
        .visit(DAY, "Ann", "Bramble", "Trim", charge)
        .read(folder, machine);
  }

  private ReadResult paid(String paid) {
    return SmallBook.visits("Date|Owner|Horse|Work|Charge|Paid")
        .visit(DAY, "Ann", "Bramble", "Trim", 45, paid)
        .read(folder);
  }

  private static Visit only(ReadResult result) {
    assertEquals(1, result.book().visits().size());
    return result.book().visits().get(0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Cash",
        "paid cash",
        "bar",
        "EC-Karte",
        "espèces",
        "CB",
        "efectivo",
        "contant",
        "pin"
      })
  void how_it_was_paid_says_that_it_was(String words) {
    ReadResult result = paid(words);
    assertEquals("", told(result));
    assertTrue(only(result).paidInFull());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "invoice",
        "owes",
        "noch nicht",
        "auf Rechnung",
        "pas encore",
        "factura",
        "op factuur"
      })
  void what_is_billed_is_not_paid(String words) {
    ReadResult result = paid(words);
    assertEquals("", told(result));
    assertEquals(Optional.empty(), only(result).paid());
    assertEquals(false, only(result).paidInFull());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bank", "half", "45 cash"})
  void what_may_be_paid_or_not_holds_its_row(String words) {
    assertEquals("held MONEY_UNREADABLE Visits!F2\n", told(paid(words)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"free", "N/C", "kostenlos", "offert", "sin cargo", "gratis"})
  void a_visit_that_is_free_in_words_is_free_and_said(String words) {
    ReadResult result = charged(words, Locale.UK);
    assertEquals("warning NUMBER_IN_WORDS Visits!E2\n", told(result));
    assertEquals(Optional.of(BigDecimal.ZERO), only(result).charge());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"de | 1,234", "de | € 1,234", "de | 45,000", "en | 45.000", "en | £1.234"})
  void one_or_a_thousand_is_never_guessed(String language, String charge) {
    Locale machine = language.equals("de") ? Locale.GERMANY : Locale.UK;
    ReadResult result = charged(charge, machine);
    assertEquals("held MONEY_UNREADABLE Visits!E2\n", told(result));
    String said = InEnglish.said(result.problems().get(0).problem());
    assertTrue(said.contains("may have decimals or thousands"), said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de | 1.234 | 1234",
        "en | 1,234 | 1234",
        "de | 0,125 | 0.125",
        "de | 1.234,500 | 1234.5",
        "en | 45.0000 | 45",
      })
  void other_amounts_have_one_reading(String language, String charge, BigDecimal amount) {
    Locale machine = language.equals("de") ? Locale.GERMANY : Locale.UK;
    assertEquals(Optional.of(amount), only(charged(charge, machine)).charge());
  }

  @Test
  void the_cost_of_a_piece_may_have_three_decimals() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .sheet("Materials", "Item|Kind|Unit cost")
            .row("Materials", "E-head", "nail", "1.125")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(Optional.of(new BigDecimal("1.125")), result.book().materials().get(0).unitCost());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"14.3.", "14/3", "3/14", "14 Mar", "March 14", "Sat 14 March", "14. März"})
  void a_day_without_its_year_is_one_of_the_sheets_month(String day) {
    assertEquals(List.of(DAY), days(day));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3/4", "14.4.", "14 Apr", "32/3", "0/3", "14 3 2", "Bramble 14"})
  void a_day_of_another_month_is_none_of_the_sheets(String day) {
    assertEquals(List.of(), days(day));
  }

  private List<LocalDate> days(String day) {
    return new SmallBook()
            .sheet("March 2026", "Date|Owner|Horse|Work|Charge")
            .row("March 2026", day, "Ann", "Bramble", "Trim", 45)
            .read(folder)
            .book()
            .visits()
            .stream()
            .map(Visit::date)
            .toList();
  }

  @Test
  void the_plural_over_the_horses_is_their_column_where_no_other_is() {
    ReadResult alone =
        SmallBook.visits("Date|Owner|Horses|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .read(folder);
    assertEquals("Bramble", only(alone).horse());
    ReadResult beside =
        SmallBook.visits("Date|Owner|Horses|Horse|Work|Charge")
            .visit(DAY, "Ann", 2, "Bramble", "Trim", 45)
            .read(folder);
    assertEquals("Bramble", only(beside).horse());
    assertEquals("", told(beside));
  }
}
