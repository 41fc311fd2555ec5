package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Counted;
import clenchbook.book.Reason;
import clenchbook.book.Setting;
import clenchbook.book.Shaping;
import clenchbook.book.SheetControl;
import clenchbook.book.Visit;
import clenchbook.texts.InEnglish;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows and cells, from every way of writing them. */
class BookReaderTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static Optional<BigDecimal> some(String number) {
    return Optional.of(new BigDecimal(number));
  }

  @Test
  void a_whole_row_of_visits_is_read_cell_by_cell() {
    ReadResult result =
        SmallBook.visits(
                "Date|Place|Owner|Horse|Work|Shoe|Size|Shoes|New"
                    + " shoes|Shaping|Nail|Nails|Extras|Trim min|Shape min|Nail min|Grind min|Forge"
                    + " min|Total min|Helper min|Charge|Paid|How|Reason|Lost|Vet|Notes")
            .visit(
                DAY,
                "Mill Yard",
                "Ann",
                "Bramble",
                "Full set",
                "Keg: 2; Wide: 2",
                "0: 2; 00: 2",
                4,
                2,
                "Hot",
                "E5",
                28,
                "pads 2; studs 8",
                "0:20",
                LocalTime.of(0, 22),
                20,
                3.5,
                "15 min",
                70,
                "",
                "£1,085.50",
                20,
                "cash",
                "lost",
                1,
                "Dr B",
                "two\nlines")
            .read(folder);
    Visit visit = result.book().visits().get(0);
    assertEquals("", told(result));
    assertEquals(DAY, visit.date());
    assertEquals(
        List.of(new Counted("0", Optional.of(2)), new Counted("00", Optional.of(2))), visit.size());
    assertEquals(Optional.of(4), visit.shoes());
    assertEquals(Optional.of(Shaping.HOT), visit.shaping());
    assertEquals(some("20"), visit.trimMin());
    assertEquals(some("22"), visit.shapeMin());
    assertEquals(some("3.5"), visit.grindMin());
    assertEquals(some("15"), visit.forgeMin());
    assertEquals(Optional.empty(), visit.helperMin());
    assertEquals(some("1085.5"), visit.charge());
    assertEquals(Reason.LOST_SHOE, visit.reason());
    assertEquals("two\nlines", visit.notes());
    assertEquals("Visits!U2", visit.source().at("Charge").toString());
  }

  @Test
  void title_rows_blank_rows_totals_and_strange_columns_do_no_harm() {
    ReadResult result =
        new SmallBook()
            .row("Visits", "My visits of the year")
            .row("Visits")
            .row("Visits", "DATE ", "", "Customer", "horse name", "Fée", "My own", "work")
            .row("Visits", DAY, "", "Ann", "Bramble", 85, "x", "Trim")
            .row("Visits", " ", "", "")
            .row("Visits", DAY, "", "Ann", "Rosie", 45, "", "Trim")
            .row("Visits", "", "", "", "", SmallBook.formula("130"), "", "")
            .read(folder);
    assertEquals("", told(result));
    assertEquals(2, result.book().visits().size());
    assertEquals(List.of(new SheetControl("Visits", 3, 1)), result.book().controls());
    assertEquals(some("85"), result.book().visits().get(0).charge());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Total", "TOTALS:", "Sum", "Gesamt", "Grand total", "Total for March"})
  void a_row_of_totals_is_ignored_wherever_its_word_stands(String word) {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Charge")
            .visit(DAY, "Bramble", "Trim", "Ann", 45)
            .visit(word, "", "", "", 45)
            .visit("", "", word, "", 45)
            .visit(DAY, "Total", "Trim", "Ann", 45)
            .read(folder);
    assertEquals("", told(result));
    assertEquals(List.of(new SheetControl("Visits", 4, 2)), result.book().controls());
  }

  @Test
  void formulas_filled_down_below_the_last_row_are_no_visits() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Charge")
            .visit(DAY, "Bramble", "Trim", "Ann", 45)
            .visit("", "", "", "", SmallBook.formula("0"))
            .visit("", "", "", "", SmallBook.formula("0"))
            .read(folder);
    assertEquals("", told(result));
    assertEquals(List.of(new SheetControl("Visits", 3, 2)), result.book().controls());
  }

  @Test
  void only_dates_and_money_hold_a_row_of_the_reader() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Charge|Shoes|Total min|Shaping|Paid")
            .visit("", "A", "Trim", "Ann", 45)
            .visit("tomorow", "B", "Trim", "Ann", 45)
            .visit("03/04/2026", "C", "Trim", "Ann", 45)
            .visit(DAY, "D", "Trim", "Ann", "lots")
            .visit(DAY, "E", "Trim", "Ann", SmallBook.error("#REF!"))
            .visit(DAY, "F", "Trim", "Ann", SmallBook.noResult())
            .visit(DAY, "G", "Trim", "Ann", -5)
            .visit(DAY, "H", "Trim", "Ann", 45, "four", "ages", "tepid", "later")
            .visit(DAY, "I", "Trim", SmallBook.error("#N/A"), 45)
            .visit(DAY, "J", "Trim", "Ann", 45, "a few", "ages", "tepid")
            .read(folder);
    assertEquals(
        """
        held DATE_MISSING Visits!A2
        held DATE_UNREADABLE Visits!A3
        held DATE_AMBIGUOUS Visits!A4
        held MONEY_UNREADABLE Visits!E5
        held ERROR_CELL Visits!E6
        held FORMULA_WITHOUT_VALUE Visits!E7
        held MONEY_NEGATIVE Visits!E8
        warning NUMBER_IN_WORDS Visits!F9
        warning MINUTES_UNREADABLE Visits!G9
        warning CHOICE_UNKNOWN Visits!H9
        held MONEY_UNREADABLE Visits!I9
        held ERROR_CELL Visits!D10
        warning NUMBER_UNREADABLE Visits!F11
        warning MINUTES_UNREADABLE Visits!G11
        warning CHOICE_UNKNOWN Visits!H11
        """,
        told(result));
    assertEquals(1, result.book().visits().size());
    assertEquals("J", result.book().visits().get(0).horse());
  }

  @Test
  void a_list_with_unreadable_money_warns_and_counts_it_as_blank() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Work", "Work|Price|Taxed part")
            .row("Work", "Trim", "much", "30%")
            .row("Work", "", 45)
            .row("Work", "Set", 100, new SmallBook.Styled("0.3", "0%"))
            .read(folder);
    assertEquals("warning MONEY_UNREADABLE Work!B2\nwarning NAME_MISSING Work!A3\n", told(result));
    assertEquals(2, result.book().work().size());
    assertEquals(Optional.empty(), result.book().work().get(0).price());
    assertEquals(some("0.3"), result.book().work().get(0).taxedPart());
    assertEquals(some("0.3"), result.book().work().get(1).taxedPart());
  }

  @Test
  void the_order_of_dates_and_the_decimal_mark_come_from_settings() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Charge")
            .visit("03/04/2026", "Bramble", "Trim", "Ann", "1.085,50")
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Date order", "DD/MM/YYYY")
            .row("Settings", "Country", "Germany")
            .row("Settings", "Language", "Deutsch")
            .row("Settings", "Hourly wage", "28,50 €")
            .read(folder, Locale.US);
    assertEquals("", told(result));
    assertEquals(LocalDate.of(2026, 4, 3), result.book().visits().get(0).date());
    assertEquals(some("1085.5"), result.book().visits().get(0).charge());
    assertEquals("DE", result.book().settings().text(Setting.COUNTRY));
    assertEquals("de", result.book().settings().text(Setting.LANGUAGE));
    assertEquals("EUR", result.book().settings().currency());
    assertEquals("28.5", result.book().settings().text(Setting.HOURLY_WAGE));
  }

  @Test
  void an_unknown_setting_is_offered_its_neighbour_and_an_unusable_one_keeps_its_default() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Hourly wgae", 30)
            .row("Settings", "Currency", "Thalers")
            .row("Settings", "Terms days", "soon")
            .row("Settings", "Terms days", "21")
            .read(folder);
    assertEquals(
        """
        warning SETTING_UNKNOWN Settings!A2
        warning SETTING_UNUSABLE Settings!B3
        warning NAME_TWICE Settings!A5
        """,
        told(result));
    assertTrue(
        InEnglish.said(result.problems().get(0).problem()).contains("did you mean Hourly wage?"));
    assertEquals("GBP", result.book().settings().currency());
    assertEquals(21, result.book().settings().whole(Setting.TERMS_DAYS));
  }

  @Test
  void merged_cells_speak_for_their_rows_but_money_only_once() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 90)
            .visit("", "", "Rosie", "Trim", "")
            .visit("", "", "Jack", "Trim", 45)
            .merge("A2:A4")
            .merge("B2:B3")
            .merge("E2:E3")
            .read(folder);
    assertEquals("", told(result));
    List<Visit> visits = result.book().visits();
    assertEquals(DAY, visits.get(2).date());
    assertEquals("Ann", visits.get(1).owner());
    assertEquals("", visits.get(2).owner());
    assertEquals(Optional.empty(), visits.get(1).charge());
    assertEquals(List.of(new SheetControl("Visits", 3, 0)), result.book().controls());
  }

  @Test
  void a_book_that_counts_from_1904_has_the_same_days() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .visit(DAY, "Bramble", "Trim", "Ann")
            .countingFrom1904()
            .read(folder);
    assertEquals(DAY, result.book().visits().get(0).date());
  }

  @Test
  void a_day_number_without_format_is_read_and_said() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .visit(46095, "Bramble", "Trim", "Ann")
            .read(folder);
    assertEquals("warning DATE_WITHOUT_FORMAT Visits!A2\n", told(result));
    assertEquals(DAY, result.book().visits().get(0).date());
  }

  @Test
  void sizes_are_recovered_or_said_to_be_lost() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Size")
            .visit(DAY, "A", "Trim", "Ann", 0)
            .visit(DAY, "B", "Trim", "Ann", new SmallBook.Styled("0", "00"))
            .visit(DAY, "C", "Trim", "Ann", new SmallBook.Styled("46158", "d-mmm"))
            .visit(DAY, "D", "Trim", "Ann", new SmallBook.Styled("46147", "d-mmm"))
            .visit(DAY, "E", "Trim", "Ann", "4x0")
            .read(folder);
    assertEquals(
        """
        warning SIZE_RECOVERED Visits!E3
        warning SIZE_RECOVERED Visits!E4
        warning SIZE_LOST Visits!E5
        """,
        told(result));
    List<Visit> visits = result.book().visits();
    assertEquals("0", visits.get(0).size().get(0).name());
    assertEquals("00", visits.get(1).size().get(0).name());
    assertEquals("5/16", visits.get(2).size().get(0).name());
    assertEquals(List.of(), visits.get(3).size());
    assertEquals("4x0", visits.get(4).size().get(0).name());
  }

  @Test
  void a_payment_without_amount_is_held_and_a_count_without_quantity_only_warns() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner")
            .sheet("Payments", "Date|Owner|Amount|Kind")
            .row("Payments", DAY, "Ann", 50, "Written-off")
            .row("Payments", DAY, "Ann", "")
            .sheet("Counts", "Date|Item|Quantity")
            .row("Counts", DAY, "Keg", "")
            .row("Counts", DAY, "Keg", 12)
            .read(folder);
    assertEquals(
        "held MONEY_UNREADABLE Payments!C3\nwarning NUMBER_UNREADABLE Counts!C2\n", told(result));
    assertEquals(1, result.book().payments().size());
    assertEquals(1, result.book().counts().size());
  }

  @Test
  void a_binary_fraction_is_read_as_the_decimal_that_the_spreadsheet_shows() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Charge")
            .visit(DAY, "A", "Trim", "Ann", new SmallBook.Raw("", "<v>85.10000000000001</v>"))
            .visit(DAY, "B", "Trim", "Ann", new SmallBook.Raw("", "<v>1.1000000000000001E-2</v>"))
            .read(folder);
    assertEquals(some("85.1"), result.book().visits().get(0).charge());
    assertEquals(some("0.011"), result.book().visits().get(1).charge());
  }

  @Test
  void problems_come_in_the_order_of_sheets_rows_and_columns() {
    ReadResult result =
        SmallBook.visits("Date|Horse|Work|Owner|Charge|Chrage x")
            .visit("x", "A", "Trim", "Ann", "y")
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Nothing", 1)
            .read(folder);
    assertEquals(
        "held DATE_UNREADABLE Visits!A2\n"
            + "held MONEY_UNREADABLE Visits!E2\n"
            + "warning SETTING_UNKNOWN Settings!A2\n",
        told(result));
  }
}
