package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
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

/** Sheets and headings, found under whatever names. */
class SheetFindingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static Optional<BigDecimal> some(String number) {
    return Optional.of(new BigDecimal(number));
  }

  @Test
  void several_sheets_of_visits_are_read_as_one_and_other_sheets_known_by_their_headings() {
    ReadResult result =
        new SmallBook()
            .sheet("2025", "Date|Horse|Job|Client")
            .row("2025", DAY.minusYears(1), "Bramble", "Trim", "Ann")
            .sheet("2026", "Date|Client|Horse|Job|Price")
            .row("2026", DAY, "Ann", "Bramble", "Trim", 50)
            .sheet("What I charge", "Service|Price")
            .row("What I charge", "Trim", 45)
            .sheet("About us", "Setting|Value")
            .row("About us", "Currency", "EUR")
            .sheet("Doodles", "This|That")
            .row("Doodles", "a", "b")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(2, result.book().visits().size());
    assertEquals("2026", result.book().visits().get(1).source().sheet());
    assertEquals(1, result.book().work().size());
    assertEquals("EUR", result.book().settings().currency());
    assertEquals(4, result.book().controls().size());
  }

  @ParameterizedTest
  @CsvSource({"Formerly, Ruth Alder", "E-invoice, xrechnung", "Buyer reference, 04-11"})
  void an_owners_sheet_with_one_column_more_is_read(String heading, String cell) {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .sheet("Owners", "Owner|" + heading)
            .row("Owners", "Ann", cell)
            .read(folder);
    assertEquals(1, result.book().owners().size(), heading);
  }

  @ParameterizedTest
  @CsvSource({
    "Date|Owner|Hrose|Work|Charge, C, Horse",
    "Dtae|Owner|Horse|Work|Charge, A, Date",
    "Date|Owner|Horse|Wrok|Charge, D, Work",
    "Datum|Besitzer|Pfred|Arbeit|Preis, C, Pferd",
  })
  void a_needed_heading_misspelt_is_offered_at_its_cell(
      String headings, String column, String meant) {
    ReadResult result =
        SmallBook.visits(headings).visit(DAY, "Ann", "Bramble", "Trim", 45).read(folder);
    Problem offer = result.problems().get(result.problems().size() - 1);
    assertEquals(ProblemKind.HEADING_UNKNOWN, offer.kind());
    assertEquals("Visits!" + column + "1", offer.at().toString());
    assertTrue(
        InEnglish.said(offer.expected()).startsWith(meant + ","), InEnglish.said(offer.expected()));
    String question = "did you mean " + meant + " in " + column + "1?";
    assertTrue(
        result.problems().stream()
            .anyMatch(problem -> InEnglish.said(problem.problem()).contains(question)));
  }

  @Test
  void an_owner_misspelt_in_a_sheet_that_is_read_is_offered_too() {
    ReadResult result =
        SmallBook.visits("Date|Ownr|Horse|Work|Charge|Sire")
            .visit(DAY, "Ann", "Bramble", "Trim", 45, "Umber")
            .read(folder);
    assertEquals(
        List.of("Owner, if that is meant"),
        result.problems().stream()
            .filter(problem -> problem.kind() == ProblemKind.HEADING_UNKNOWN)
            .map(problem -> InEnglish.said(problem.expected()))
            .toList());
  }

  @Test
  void sheets_that_cannot_be_told_apart_are_named() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Prices old", "Work|Price")
            .row("Prices old", "Trim", 40)
            .sheet("Prices new", "Work|Price")
            .row("Prices new", "Trim", 45)
            .read(folder);
    assertEquals("note SHEET_AMBIGUOUS Prices new\n", told(result));
    assertTrue(
        InEnglish.said(result.problems().get(0).problem())
            .contains("'Prices old' and 'Prices new'"));
    assertEquals(some("40"), result.book().work().get(0).price());
  }

  @Test
  void two_columns_of_one_meaning_are_said_and_the_left_counts() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Fee|Charge")
            .visit(DAY, "Bramble", "Trim", "Ann", 45, 99)
            .read(folder);
    assertEquals("warning HEADING_TWICE Visits!F1\n", told(result));
    assertEquals(some("45"), result.book().visits().get(0).charge());
  }

  @Test
  void a_misspelt_heading_is_offered_the_known_one() {
    ReadResult result = SmallBook.visits("Date|Horse|Work|Owner|Chrage|Weather").read(folder);
    assertEquals("warning HEADING_UNKNOWN Visits!E1\n", told(result));
    assertTrue(InEnglish.said(result.problems().get(0).expected()).contains("Charge"));
  }

  @Test
  void the_sheet_headings_translates_a_german_book() {
    ReadResult result =
        new SmallBook()
            .sheet("Einsätze", "Datum|Kunde|Pferd|Arbeit|Preis|Beschlagart")
            .row("Einsätze", DAY, "Ann", "Bramble", "Ausschneiden", "45,50", "warm")
            .sheet("Einstellungen", "Was|Wert")
            .row("Einstellungen", "Stundenlohn", "30")
            .row("Einstellungen", "Land", "DE")
            .row("Einstellungen", "Sprache", "de")
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Einsätze", "", "Visits")
            .row("Headings", "Einsätze", "Datum", "Date")
            .row("Headings", "Visits", "Kunde", "Owner")
            .row("Headings", "", "Pferd", "Horse")
            .row("Headings", "Einsätze", "Arbeit", "Work")
            .row("Headings", "Einsätze", "Preis", "Charge")
            .row("Headings", "Einsätze", "Beschlagart", "Method")
            .row("Headings", "Einstellungen", "", "Settings")
            .row("Headings", "Einstellungen", "Was", "Setting")
            .row("Headings", "Einstellungen", "Wert", "Value")
            .row("Headings", "Settings", "Stundenlohn", "Hourly wage")
            .row("Headings", "Settings", "Land", "Country")
            .row("Headings", "Settings", "Sprache", "Language")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(some("45.5"), result.book().visits().get(0).charge());
    assertEquals("Ann", result.book().visits().get(0).owner());
    assertEquals("30", result.book().settings().text(Setting.HOURLY_WAGE));
  }

  @Test
  void a_french_book_is_translated_as_well() {
    ReadResult result =
        new SmallBook()
            .sheet("Journal", "Date|Client|Cheval|Travail|Prix")
            .row("Journal", "14 mars 2026", "Ann", "Bramble", "Parage", "45,50 €")
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Journal", "", "Visits")
            .row("Headings", "Journal", "Cheval", "Horse")
            .row("Headings", "Journal", "Travail", "Work")
            .row("Headings", "Journal", "Prix", "Charge")
            .read(folder, Locale.FRANCE);
    assertEquals("", told(result));
    assertEquals(some("45.5"), result.book().visits().get(0).charge());
  }

  @Test
  void a_word_of_headings_that_means_nothing_is_said() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Visits", "Preis", "Chrage")
            .row("Headings", "Pferde", "", "Hoarses")
            .read(folder);
    assertEquals(
        "warning HEADING_UNKNOWN Headings!C2\nwarning HEADING_UNKNOWN Headings!C3\n", told(result));
    assertTrue(InEnglish.said(result.problems().get(1).expected()).contains("Horses"));
  }

  @Test
  void a_book_without_visits_says_what_is_missing_and_what_was_found() {
    ReadResult result =
        new SmallBook()
            .sheet("Diary", "Date|Horse|Owner|Weather")
            .row("Diary", DAY, "Bramble", "Ann", "wet")
            .read(folder);
    assertFalse(result.book().present().contains(SheetKind.VISITS));
    assertEquals("note SHEET_MISSING \nnote HEADING_MISSING Diary\n", told(result));
    assertTrue(InEnglish.said(result.problems().get(1).problem()).contains("Work"));
    assertTrue(InEnglish.said(result.problems().get(1).problem()).contains("Weather"));
  }

  @Test
  void a_log_called_work_is_a_log_and_a_price_list_beside_it_a_price_list() {
    ReadResult result =
        new SmallBook()
            .sheet("Work", "Date|Horse|Work|Owner|Shoes|Charge (GBP)")
            .row("Work", DAY, "Bramble", "Trim", "Ann", "0 shoes", 45)
            .sheet("Price list", "Work|Price (incl. everything)")
            .row("Price list", "Trim", 45)
            .read(folder);
    assertEquals("", told(result));
    assertEquals(some("45"), result.book().visits().get(0).charge());
    assertEquals(1, result.book().work().size());
  }

  @Test
  void a_sheet_that_may_be_two_things_is_not_read_and_is_named() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Stuff", "Item|Cost|Kind")
            .row("Stuff", "Forge", 900, "tool")
            .read(folder);
    assertEquals("note SHEET_AMBIGUOUS Stuff\n", told(result));
    assertTrue(InEnglish.said(result.problems().get(0).problem()).contains("Materials or Assets"));
  }

  @Test
  void an_owner_of_many_sheets_is_read_from_the_sheet_that_bears_the_name() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Old clients", "Client|Address")
            .row("Old clients", "Bob", "somewhere")
            .sheet("OWNERS ", "Owner|Address")
            .row("OWNERS ", "Ann", "here")
            .read(folder);
    assertEquals("note SHEET_IGNORED Old clients\n", told(result));
    assertEquals("Ann", result.book().owners().get(0).name());
  }
}
