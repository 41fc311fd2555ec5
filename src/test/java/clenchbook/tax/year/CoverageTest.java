package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.jobs.WrittenBook;
import clenchbook.texts.InEnglish;
import clenchbook.values.Period;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many months a book covers; by hand. */
class CoverageTest {
  private static final Period CALENDAR_YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
  private static final Period TAX_YEAR =
      new Period(LocalDate.of(2026, 4, 6), LocalDate.of(2027, 4, 5));

  /** A book with a visit on the tenth of each month from one to another. */
  private static WrittenBook book(String from, String to) {
    WrittenBook book = new WrittenBook();
    for (YearMonth month = YearMonth.parse(from);
        !month.isAfter(YearMonth.parse(to));
        month = month.plusMonths(1)) {
      book.visit("Date: " + month.atDay(10) + ", Horse: Bess, Owner: Ash, Work: Set, Charge: 1");
    }
    return book;
  }

  @ParameterizedTest
  @CsvSource({
    "2026-01,2026-07,7",
    "2026-04,2026-12,9",
    "2026-01,2026-12,12",
    "2025-03,2027-02,12",
    "2025-11,2026-07,7",
    "2026-05,2026-05,1",
    "2025-01,2025-12,0"
  })
  void months_run_from_where_the_book_begins_to_where_it_ends(String from, String to, int months) {
    assertEquals(months, Coverage.of(book(from, to).jobs(), CALENDAR_YEAR).covered());
  }

  /** Months of a tax year run from the sixth to the fifth. */
  @ParameterizedTest
  @CsvSource({"2026-04,2026-07,4", "2026-04,2027-03,12", "2026-05,2027-03,11"})
  void months_of_a_tax_year_are_its_own(String from, String to, int months) {
    assertEquals(months, Coverage.of(book(from, to).jobs(), TAX_YEAR).covered());
  }

  @Test
  void a_purchase_a_payment_or_a_trip_counts_as_well_as_a_visit() {
    WrittenBook book =
        book("2026-02", "2026-02")
            .purchase("Date: 2026-01-05, Supplier: Ink Shop, Category: Stationery, Gross: 1")
            .payment("Date: 2026-09-05, Owner: Ash, Amount: 1")
            .trip("Date: 2026-11-05, From: Home, To: Oak, Distance: 1");
    Coverage found = Coverage.of(book.jobs(), CALENDAR_YEAR);
    assertEquals(11, found.covered());
    assertEquals(7, found.bare().size());
    assertTrue(said(found).contains("11 of 12 months"));
  }

  @Test
  void a_month_in_between_without_a_row_is_named() {
    WrittenBook book = book("2026-01", "2026-04");
    book("2026-06", "2026-12");
    for (int month = 6; month <= 12; month++) {
      book.visit(
          "Date: "
              + LocalDate.of(2026, month, 3)
              + ", Horse: Bess, Owner: Ash, Work: Set, Charge: 1");
    }
    Coverage found = Coverage.of(book.jobs(), CALENDAR_YEAR);
    assertTrue(found.whole());
    assertEquals(List.of(LocalDate.of(2026, 5, 1)), found.bare());
    assertTrue(said(found).contains("2026-05-01"));
  }

  @Test
  void a_whole_year_needs_no_word() {
    assertTrue(Coverage.of(book("2026-01", "2026-12").jobs(), CALENDAR_YEAR).sentences().isEmpty());
  }

  private static String said(Coverage found) {
    return found.sentences().stream().map(InEnglish::filed).collect(Collectors.joining(" "));
  }
}
