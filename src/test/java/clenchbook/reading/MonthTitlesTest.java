package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.SheetControl;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Months written between the days of one sheet: no day falls into the month before. */
class MonthTitlesTest {
  private static final String HEADINGS = "Date|Owner|Horse|Work|Charge";

  @TempDir Path folder;

  private static SmallBook day(SmallBook book, String sheet, Object day) {
    return book.row(sheet, day, "Ann", "Bramble", "Trim", 45);
  }

  private static String days(ReadResult result) {
    return result.book().visits().stream()
        .map(visit -> visit.date().toString())
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"February 2026", "FEBRUARY", "Feb", "Februar 2026", "Mes de febrero", "02/2026"})
  void a_month_between_the_days_counts_from_there(String title) {
    SmallBook book = new SmallBook().row("Log", "January 2026").sheet("Log", HEADINGS);
    day(book, "Log", 3);
    book.row("Log", title);
    ReadResult result = day(book, "Log", 4).read(folder);
    assertEquals("", told(result));
    assertEquals("2026-01-03 2026-02-04", days(result));
    assertEquals(List.of(new SheetControl("Log", 3, 1)), result.book().controls());
  }

  @Test
  void the_same_headings_below_a_month_go_on_in_that_month() {
    SmallBook book = new SmallBook().row("Log", "January 2026").sheet("Log", HEADINGS);
    day(book, "Log", 3);
    book.row("Log").row("Log", "February 2026").sheet("Log", HEADINGS);
    ReadResult result = day(book, "Log", 4).read(folder);
    assertEquals("", told(result));
    assertEquals("2026-01-03 2026-02-04", days(result));
  }

  @Test
  void the_sheet_gives_the_year_of_months_that_have_none() {
    SmallBook book = new SmallBook().sheet("2026", HEADINGS);
    day(day(book.row("2026", "January"), "2026", 3).row("2026", "March"), "2026", 4);
    assertEquals("2026-01-03 2026-03-04", days(book.read(folder)));
  }

  @Test
  void after_december_a_new_year_begins_and_before_january_nobody_knows() {
    SmallBook book = new SmallBook().row("Log", "December 2025").sheet("Log", HEADINGS);
    day(day(book, "Log", 3).row("Log", "January"), "Log", 4);
    assertEquals("2025-12-03 2026-01-04", days(book.read(folder)));
    ReadResult back = day(book.row("Log", "December"), "Log", 5).read(folder);
    assertEquals("held DATE_UNREADABLE Log!A7\n", told(back));
  }

  @Test
  void months_may_run_backwards() {
    SmallBook book = new SmallBook().row("Log", "March 2026").sheet("Log", HEADINGS);
    day(day(book, "Log", 3).row("Log", "February"), "Log", 4);
    assertEquals("2026-03-03 2026-02-04", days(book.read(folder)));
  }

  @Test
  void a_month_that_a_cell_shows_of_a_day_is_a_title_too() {
    SmallBook book = new SmallBook().row("Log", "January 2026").sheet("Log", HEADINGS);
    day(book, "Log", 3).row("Log", new SmallBook.Styled("46054", "mmmm yyyy"));
    assertEquals("2026-01-03 2026-02-04", days(day(book, "Log", 4).read(folder)));
  }

  @Test
  void a_day_over_its_horses_is_no_months_title() {
    SmallBook book =
        SmallBook.visits(HEADINGS)
            .visit("14-03-2026")
            .visit("", "Ann", "Bramble", "Trim", 45)
            .visit("14 April 2026")
            .visit("", "Ann", "Bramble", "Trim", 45)
            .visit(LocalDate.of(2026, 5, 14))
            .visit("", "Ann", "Bramble", "Trim", 45)
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Visits", "Date", "Date, carried down");
    ReadResult result = book.read(folder);
    assertEquals("", told(result));
    assertEquals("2026-03-14 2026-04-14 2026-05-14", days(result));
  }

  @Test
  void a_note_that_names_a_month_and_a_payment_in_one_turn_nothing() {
    SmallBook book = new SmallBook().row("Log", "January 2026").sheet("Log", HEADINGS + "|Notes");
    day(book, "Log", 3).row("Log", "", "", "", "", "", "see March");
    book.sheet("Payments", "Date|Amount|Owner").row("Payments", "March 2026", 45);
    ReadResult result = day(book, "Log", 4).read(folder);
    assertEquals("held DATE_MISSING Log!A4\nheld DATE_UNREADABLE Payments!A2\n", told(result));
    assertEquals("2026-01-03 2026-01-04", days(result));
  }
}
