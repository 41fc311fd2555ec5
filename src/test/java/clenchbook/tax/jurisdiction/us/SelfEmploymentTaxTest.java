package clenchbook.tax.jurisdiction.us;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelfEmploymentTaxTest {
  private final RateLookup rates = new RateLookup(RateFiles.bundled());

  /**
   * 100,000 in 2024: worked example of open-exam-prep.com, "Self-employment tax" (enrolled agent
   * exam), printed in whole dollars as 11,451, 2,678, 14,129 and 7,065, with the cap of 20,906.40.
   * The cap of 2025, 21,836.40: taxbuzz.com. All other rows follow from the formula (arithmetic, no
   * source of their own).
   */
  @ParameterizedTest
  @CsvSource({
    "100000,2024,92350.00,11451.40,2678.15,14129.55,7064.78",
    "50000,2025,46175.00,5725.70,1339.08,7064.78,3532.39",
    "200000,2024,184700.00,20906.40,5356.30,26262.70,13131.35",
    "200000,2025,184700.00,21836.40,5356.30,27192.70,13596.35",
    "200000,2026,184700.00,22878.00,5356.30,28234.30,14117.15",
    "433,2025,399.88,0.00,0.00,0.00,0.00",
    "434,2025,400.80,49.70,11.62,61.32,30.66",
    "433.13,2025,400.00,0.00,0.00,0.00,0.00",
    "-1500,2025,0.00,0.00,0.00,0.00,0.00"
  })
  void estimate(
      BigDecimal profit,
      int year,
      BigDecimal earnings,
      BigDecimal social,
      BigDecimal medicare,
      BigDecimal tax,
      BigDecimal half) {
    SelfEmploymentTax found = of(profit, year);
    assertEquals(new SelfEmploymentTax(earnings, social, medicare, tax, half), found);
  }

  private SelfEmploymentTax of(BigDecimal profit, int year) {
    return SelfEmploymentTax.of(profit, LocalDate.of(year, 12, 31), rates, new MinorUnit(2))
        .orElseThrow();
  }

  @Test
  void a_year_the_table_lacks_gives_no_estimate_and_names_the_table() {
    LocalDate day = LocalDate.of(2099, 12, 31);
    assertTrue(SelfEmploymentTax.of(BigDecimal.TEN, day, rates, new MinorUnit(2)).isEmpty());
    assertTrue(rates.missing().get(0).table().contains("us/self-employment"));
  }
}
