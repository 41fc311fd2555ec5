package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import clenchbook.tax.rates.WrittenRates;
import clenchbook.values.Period;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quarters and names of a tax year that begins on 6 April, by the calendar. */
class TaxYearQuartersTest {
  private static final TaxYear YEAR =
      new TaxYear(
          WrittenRates.regime(),
          2025,
          new Period(LocalDate.of(2025, 4, 6), LocalDate.of(2026, 4, 5)),
          false);

  @ParameterizedTest
  @CsvSource({
    "1,2025-04-06,2025-07-05,2025-04-01,2025-06-30",
    "2,2025-07-06,2025-10-05,2025-07-01,2025-09-30",
    "3,2025-10-06,2026-01-05,2025-10-01,2025-12-31",
    "4,2026-01-06,2026-04-05,2026-01-01,2026-03-31"
  })
  void a_quarter_is_three_months_from_the_sixth_or_of_the_calendar(
      int number,
      LocalDate first,
      LocalDate last,
      LocalDate calendarFirst,
      LocalDate calendarLast) {
    assertEquals(new Period(first, last), YEAR.quarter(number));
    assertEquals(
        new Period(calendarFirst, calendarLast), YEAR.withCalendarQuarters().quarter(number));
    assertEquals(new Period(LocalDate.of(2025, 4, 6), last), YEAR.toEndOfQuarter(number));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 5})
  void there_are_four_quarters(int number) {
    assertThrows(IllegalArgumentException.class, () -> YEAR.quarter(number));
  }

  @ParameterizedTest
  @CsvSource({"2026-04-05,2025", "2026-04-06,2026", "2025-01-01,2024", "2025-12-31,2025"})
  void a_day_lies_in_the_year_that_began_last(LocalDate day, int year) {
    assertEquals(year, YEAR.yearOf(day));
  }

  @Test
  void a_year_over_two_is_named_by_both() {
    assertEquals("2025-26", YEAR.label());
    Period century = new Period(LocalDate.of(2099, 4, 6), LocalDate.of(2100, 4, 5));
    assertEquals("2099-00", new TaxYear(WrittenRates.regime(), 2099, century, false).label());
  }

  @Test
  void quarters_by_the_calendar_change_nothing_else() {
    assertEquals(new TaxYear(YEAR.regime(), 2025, YEAR.days(), true), YEAR.withCalendarQuarters());
    assertEquals(LocalDate.of(2025, 4, 6), YEAR.withCalendarQuarters().first());
    assertEquals(LocalDate.of(2026, 4, 5), YEAR.withCalendarQuarters().last());
  }
}
