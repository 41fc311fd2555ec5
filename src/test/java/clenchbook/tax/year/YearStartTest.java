package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.Jurisdictions;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The first day of a year. Own days: 6 April (Income Tax Act 2007 s.4), 1 July (ato.gov.au,
 * quarters of the year to 30 June), else the calendar year (IRC 441(b); EStG § 4a; canada.ca, sole
 * proprietors).
 */
class YearStartTest {

  private static YearStart of(String regime, String month) {
    WrittenBook book = new WrittenBook().setting(Setting.TAX_REGIME, regime);
    if (month != null) {
      book.setting(Setting.YEAR_STARTS, month);
    }
    return YearStart.of(
        Jurisdictions.find(regime).orElseThrow().regime(),
        book.book().settings(),
        RateFiles.bundled());
  }

  @ParameterizedTest(name = "{0}, month {1}: {2} lies in the year from {3}")
  @CsvSource({
    "plain, , 2026-03-31, 2026-01-01",
    "us, , 2026-12-31, 2026-01-01",
    "ca, , 2026-01-01, 2026-01-01",
    "de, , 2031-05-05, 2031-01-01",
    "uk, , 2026-04-05, 2025-04-06",
    "uk, , 2026-04-06, 2026-04-06",
    "uk, 4, 2026-04-05, 2025-04-06",
    "uk, 1, 2026-04-05, 2026-01-01",
    "uk, , 2031-04-05, 2030-04-06",
    "au, , 2026-06-30, 2025-07-01",
    "au, , 2026-07-01, 2026-07-01",
    "au, 7, 2026-06-30, 2025-07-01",
    "au, 1, 2026-06-30, 2026-01-01",
    "plain, 7, 2026-03-31, 2025-07-01",
    "us, 13, 2026-03-31, 2026-01-01"
  })
  void the_year_starts_where_the_settings_or_the_regime_say(
      String regime, String month, LocalDate day, LocalDate first) {
    assertEquals(first, of(regime, month).holding(day));
  }

  /**
   * Every regime: a day lies in the tax year that is named by its first day's year, and no other.
   */
  @ParameterizedTest
  @ValueSource(strings = {"", "1", "4", "7", "12"})
  void the_day_of_a_year_to_date_lies_in_the_tax_year_of_that_first_day(String month) {
    for (String word : Jurisdictions.words()) {
      YearStart starts = of(word, month.isEmpty() ? null : month);
      Regime regime = Jurisdictions.find(word).orElseThrow().regime();
      for (LocalDate day : List.of(day(1, 1), day(4, 5), day(4, 6), day(6, 30), day(12, 31))) {
        LocalDate first = starts.holding(day);
        TaxYear year = TaxYear.of(regime, first.getYear(), starts);
        assertEquals(first, year.first(), word + " " + day);
        assertTrue(year.days().holds(day), word + " " + day);
        assertEquals(first.getYear(), year.yearOf(day), word + " " + day);
      }
    }
  }

  private static LocalDate day(int month, int day) {
    return LocalDate.of(2026, month, day);
  }
}
