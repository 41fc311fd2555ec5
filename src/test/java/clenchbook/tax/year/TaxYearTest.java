package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.jurisdiction.plain.PlainJurisdiction;
import clenchbook.tax.jurisdiction.uk.UkJurisdiction;
import clenchbook.tax.jurisdiction.us.UsJurisdiction;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TaxYearTest {
  private static TaxYear of(Regime regime, int year, Optional<Integer> month) {
    return TaxYear.of(
        regime, year, new YearStart(RateFiles.bundled().table(regime.table("year")), month));
  }

  /** Income Tax Act 2007 s.4, from memory: 5 April ends a year, 6 April begins the next. */
  @Test
  void the_uk_year_turns_between_the_fifth_and_the_sixth_of_april() {
    TaxYear before = of(UkJurisdiction.REGIME, 2024, Optional.empty());
    TaxYear after = of(UkJurisdiction.REGIME, 2025, Optional.empty());
    assertTrue(before.days().holds(LocalDate.of(2025, 4, 5)));
    assertFalse(before.days().holds(LocalDate.of(2025, 4, 6)));
    assertTrue(after.days().holds(LocalDate.of(2025, 4, 6)));
    assertEquals("2025-26", after.label());
    assertEquals("2025-07-06 to 2025-10-05", after.quarter(2).text());
    assertEquals(LocalDate.of(2026, 4, 5), after.quarter(4).last());
  }

  @Test
  void the_us_year_is_the_calendar_year() {
    assertEquals(
        "2026-01-01 to 2026-12-31",
        of(UsJurisdiction.REGIME, 2026, Optional.empty()).days().text());
    assertEquals("2026", of(UsJurisdiction.REGIME, 2026, Optional.empty()).label());
  }

  @Test
  void the_setting_moves_the_start_and_april_in_the_uk_is_the_tax_year() {
    assertEquals(
        "2026-07-01 to 2027-06-30",
        of(PlainJurisdiction.REGIME, 2026, Optional.of(7)).days().text());
    assertEquals(LocalDate.of(2026, 4, 6), of(UkJurisdiction.REGIME, 2026, Optional.of(4)).first());
  }

  @Test
  void a_year_beyond_the_tables_still_has_its_days() {
    assertEquals(
        LocalDate.of(2031, 4, 6), of(UkJurisdiction.REGIME, 2031, Optional.empty()).first());
  }
}
