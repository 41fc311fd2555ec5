package clenchbook.tax.jurisdiction.us;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.YearBook;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QualifiedIncomeTest {

  /**
   * 2,000 in 2026 gives 400 (sandiegotaxhelp.com); 1,000 gives 200 in 2025 and 400 in 2026, by the
   * minimum of P.L. 119-21, section 70105 (agcpaservices.com, "Tax Tip #267"); below 1,000, and
   * 50,000 in 2025, the share alone (by the rule).
   */
  @ParameterizedTest
  @CsvSource({
    "2000,2026,400.00",
    "1000,2026,400.00",
    "999.99,2026,200.00",
    "1000,2025,200.00",
    "50000,2025,10000.00",
    "-5,2026,0.00"
  })
  void a_fifth_and_from_2026_at_least_four_hundred(BigDecimal profit, int year, BigDecimal want) {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    assertEquals(
        want,
        QualifiedIncome.of(
                profit, BigDecimal.ZERO, LocalDate.of(year, 12, 31), rates, new MinorUnit(2))
            .orElseThrow()
            .deduction());
  }

  /** By hand: 50,000 less half of 7,064.78 is 46,467.61; a fifth of it is 9,293.52. */
  @Test
  void half_of_the_self_employment_tax_comes_off_first_and_the_line_is_an_estimate() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "us")
            .payment("Date: 2025-03-01, Owner: Ash, Amount: 50000");
    assertEquals(
        Optional.of("9293.52"), YearBook.amount(YearBook.end(book, List.of(), 2025), "QBI"));
    assertEquals(
        "estimate",
        YearBook.table(YearBook.end(book, List.of(), 2025), "tax-summary").rows().stream()
            .filter(row -> row.get(1).equals("QBI"))
            .findFirst()
            .orElseThrow()
            .get(4));
  }
}
