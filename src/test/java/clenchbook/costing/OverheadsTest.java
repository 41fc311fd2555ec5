package clenchbook.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The year's overheads, added up on paper from the rule in docs/figures.md. */
class OverheadsTest {
  private static Overheads overheads(WrittenBook book) {
    return Overheads.of(book.jobs(), CostedBook.LAST);
  }

  private static String expense(String day, String category, String cells) {
    return "Date: " + day + ", Category: " + category + ", " + cells;
  }

  @Test
  void the_settings_figure_stands_whatever_the_book_says() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.YEARLY_OVERHEADS, "3000")
            .purchase(expense("2026-10-05", "Insurance", "Net: 100"));
    Overheads overheads = overheads(book);
    assertEquals(new BigDecimal("3000"), overheads.yearly());
    assertEquals(Basis.STANDARD, overheads.basis());
    assertEquals(List.of(), overheads.months());
    // 3000 over 1500 hours of 60 minutes.
    assertEquals("0.0333", overheads.perMinute().setScale(4, RoundingMode.HALF_UP).toString());
  }

  /** The twelve months to 31 October 2026 begin on 1 November 2025. */
  @ParameterizedTest
  @CsvSource({"2025-10-31, 0", "2025-11-01, 100", "2026-10-31, 100", "2026-11-01, 0"})
  void twelve_months_to_the_months_end_are_looked_at(String day, BigDecimal yearly) {
    WrittenBook book = new WrittenBook().purchase(expense(day, "Insurance", "Net: 100"));
    assertEquals(0, yearly.compareTo(overheads(book).yearly()));
  }

  @ParameterizedTest
  @CsvSource({
    "Insurance, 100",
    "'', 100",
    "Bottled gas, 0",
    "PROPANE refill, 0",
    "Vehicle repair, 0",
    "Asset, 0",
    "Private, 0"
  })
  void what_a_job_bears_already_is_no_overhead(String category, BigDecimal yearly) {
    WrittenBook book = new WrittenBook().purchase(expense("2026-05-05", category, "Net: 100"));
    assertEquals(0, yearly.compareTo(overheads(book).yearly()));
  }

  @Test
  void stock_is_no_overhead() {
    WrittenBook book =
        new WrittenBook().purchase(expense("2026-05-05", "Insurance", "Net: 100, Item: plain"));
    assertEquals(0, overheads(book).yearly().signum());
    assertEquals(Basis.DEFAULT, overheads(book).basis());
  }

  @ParameterizedTest
  @CsvSource({"yes, 100", "no, 120"})
  void input_tax_that_comes_back_is_no_overhead(String recovered, BigDecimal yearly) {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.INPUT_TAX_RECOVERED, recovered)
            .purchase(expense("2026-05-05", "Insurance", "Net: 100, Gross: 120"));
    assertEquals(0, yearly.compareTo(overheads(book).yearly()));
  }

  @Test
  void the_months_that_bear_expenses_are_named_once_each_in_order() {
    WrittenBook book =
        new WrittenBook()
            .purchase(expense("2026-05-05", "Insurance", "Net: 100"))
            .purchase(expense("2026-02-01", "Phone", "Net: 10"))
            .purchase(expense("2026-05-20", "Phone", "Net: 10"))
            .purchase(expense("2026-07-20", "Gas", "Net: 10"));
    assertEquals(List.of(YearMonth.of(2026, 2), YearMonth.of(2026, 5)), overheads(book).months());
    assertEquals(Basis.MEASURED, overheads(book).basis());
  }

  /** A visit that was cancelled makes no day of visits; private trips never count. */
  @Test
  void business_trips_on_days_without_visits_are_overheads() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.VEHICLE_COST, "0.50")
            .visit("Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Trim")
            .visit("Date: 2026-10-06, Horse: A, Owner: Ruth, Work: Trim, Reason: cancelled")
            .trip("Date: 2026-10-05, Distance: 1000")
            .trip("Date: 2026-10-06, Distance: 30")
            .trip("Date: 2026-10-07, Odometer start: 10, Odometer end: 20")
            .trip("Date: 2026-10-08, Drive min: 10")
            .trip("Date: 2026-10-08, Distance: 1000, Purpose: private")
            .trip("Date: 2025-10-31, Distance: 1000");
    assertEquals(0, new BigDecimal("20").compareTo(overheads(book).yearly()));
    assertEquals(Basis.MEASURED, overheads(book).basis());
  }

  @Test
  void a_year_without_hours_bears_nothing_a_minute() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.YEARLY_OVERHEADS, "3000")
            .setting(Setting.HOURS_PER_YEAR, "0");
    assertEquals(BigDecimal.ZERO, overheads(book).perMinute());
  }
}
