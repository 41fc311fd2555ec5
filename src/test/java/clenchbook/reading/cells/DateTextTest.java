package clenchbook.reading.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateTextTest {
  private static DateText.Reading plain(String text) {
    return DateText.read(text, Optional.empty());
  }

  private static DateText.Reading read(String text, DateText.Order order) {
    return DateText.read(text, Optional.of(order));
  }

  /** ISO 8601-1:2019, 5.2: calendar, ordinal and week dates, basic and extended (from memory). */
  @ParameterizedTest
  @CsvSource({
    "1985-04-12, 1985-04-12",
    "19850412, 1985-04-12",
    "1985-102, 1985-04-12",
    "1985-W15-5, 1985-04-12",
    "2026-03-14T09:30:00, 2026-03-14",
    "2026-03-14 09:30, 2026-03-14",
    "2026-03-14T09:30:00Z, 2026-03-14",
    "2026-03-14T23:30+02:00, 2026-03-14",
    "2026-3-4, 2026-03-04",
    "2024-02-29, 2024-02-29",
  })
  void an_iso_date_is_read_everywhere(String text, LocalDate day) {
    assertEquals(List.of(day), plain(text).days());
  }

  @ParameterizedTest
  @CsvSource({
    "14/03/2026, 2026-03-14", "3/14/2026, 2026-03-14", "14.03.2026, 2026-03-14",
    "04/04/2026, 2026-04-04", "2026/03/14, 2026-03-14", "14 March 2026, 2026-03-14",
    "14-Mar-26, 2026-03-14", "'March 14, 2026', 2026-03-14", "'Sat, 14 Mar 2026', 2026-03-14",
    "14th of March 2026, 2026-03-14", "14. März 2026, 2026-03-14", "14 août 2026, 2026-08-14",
    "mardi 3 mars 2026, 2026-03-03", "1er mai 2026, 2026-05-01", "2026 Mar 14, 2026-03-14",
    "13/1/98, 1998-01-13", "14/03/26, 2026-03-14", "Dienstag 3. Juni 2025, 2025-06-03",
  })
  void a_text_with_only_one_reading_needs_no_order(String text, LocalDate day) {
    assertEquals(List.of(day), plain(text).days());
  }

  @Test
  void two_readings_without_an_order_are_both_given_and_none_is_guessed() {
    List<LocalDate> both = List.of(LocalDate.of(2026, 3, 4), LocalDate.of(2026, 4, 3));
    assertEquals(both, plain("03/04/2026").days());
    assertEquals(both, plain("3-4-26").days());
  }

  @Test
  void a_dotted_date_is_day_first() {
    assertEquals(List.of(LocalDate.of(2026, 4, 3)), plain("3.4.26").days());
  }

  @Test
  void the_order_of_the_book_settles_it() {
    LocalDate march = LocalDate.of(2026, 3, 4);
    LocalDate april = LocalDate.of(2026, 4, 3);
    assertEquals(List.of(april), read("03/04/2026", DateText.Order.DMY).days());
    assertEquals(List.of(march), read("03/04/2026", DateText.Order.MDY).days());
    assertEquals(List.of(LocalDate.of(2003, 4, 26)), read("03/04/26", DateText.Order.YMD).days());
  }

  @Test
  void a_day_that_fits_only_the_other_order_is_read_and_said() {
    DateText.Reading reading = read("03/14/2026", DateText.Order.DMY);
    assertEquals(List.of(LocalDate.of(2026, 3, 14)), reading.days());
    assertTrue(reading.otherOrder());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tomorow",
        "next wk",
        "31/02/2026",
        "2026-02-30",
        "14/3",
        "March",
        "45",
        "1/2/3/4",
        "0:45",
        "2026-13-01",
        "32.01.2026",
        "12026-01-01",
        "14-March-March",
        "Trim 4 5 2026",
        "15.",
        "-",
        "1066-10-14",
        "2026-03-14 to 2026-03-16",
        "5/16",
      })
  void anything_else_is_no_day(String text) {
    assertEquals(List.of(), plain(text).days());
  }
}
