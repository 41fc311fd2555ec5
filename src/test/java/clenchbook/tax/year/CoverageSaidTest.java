package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.jobs.WrittenBook;
import clenchbook.texts.InEnglish;
import clenchbook.values.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said where a book does not cover the period. */
class CoverageSaidTest {
  private static final Period QUARTER =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 3, 31));

  private static Coverage of(String... days) {
    WrittenBook book = new WrittenBook();
    for (String day : days) {
      book.trip("Date: " + day + ", From: Home, To: Oak, Distance: 1");
    }
    return Coverage.of(book.jobs(), QUARTER);
  }

  private static List<String> said(Coverage found) {
    return found.sentences().stream().map(InEnglish::filed).toList();
  }

  @Test
  void a_book_without_a_row_in_the_period_says_so_and_nothing_more() {
    Coverage found = of("2025-12-31", "2026-04-01");
    assertEquals(new Coverage(QUARTER, 3, 0, Optional.empty(), Optional.empty(), List.of()), found);
    assertFalse(found.whole());
    assertEquals(List.of("The book has no rows from " + QUARTER.text() + "."), said(found));
  }

  @Test
  void a_part_of_a_quarter_is_no_whole_quarter() {
    Coverage found = of("2026-02-10", "2026-02-20");
    assertEquals(1, found.covered());
    assertEquals(
        List.of(
            "This covers 1 of 3 months: the book's rows run from 2026-02-10 to 2026-02-20.",
            "It is no whole quarter: profit, tax and estimates will change."),
        said(found));
  }

  @Test
  void the_first_and_the_last_day_of_a_month_cover_it() {
    assertEquals(3, of("2026-01-31", "2026-03-01").covered());
    assertEquals(2, of("2026-02-01", "2026-03-01").covered());
    assertEquals(2, of("2026-01-31", "2026-02-28").covered());
    assertEquals(3, of("2025-12-31", "2026-03-31").covered());
    assertEquals(2, of("2026-02-01", "2026-04-01").covered(), "it goes on");
  }

  @Test
  void bare_months_between_are_named_by_their_first_days() {
    Coverage found = of("2025-12-31", "2026-01-31", "2026-04-01");
    assertTrue(found.whole());
    assertEquals(List.of(LocalDate.of(2026, 2, 1), LocalDate.of(2026, 3, 1)), found.bare());
    assertEquals(
        List.of("No row at all stands in the months that begin on 2026-02-01, 2026-03-01."),
        said(found));
    assertEquals(List.of(), of("2026-01-01", "2026-02-28", "2026-03-31").bare());
  }

  @Test
  void a_cancelled_visit_covers_nothing() {
    WrittenBook book =
        new WrittenBook()
            .visit(
                "Date: 2026-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 1, Reason:"
                    + " cancelled");
    assertEquals(0, Coverage.of(book.jobs(), QUARTER).covered());
  }
}
