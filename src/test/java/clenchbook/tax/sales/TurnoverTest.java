package clenchbook.tax.sales;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.TaxKind;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Taxable turnover by the month of the work. */
class TurnoverTest {

  private static BilledLine line(String day, String code, String net) {
    return new BilledLine(
        "Visits",
        2,
        LocalDate.parse(day),
        "",
        code,
        BigDecimal.ZERO,
        new BigDecimal(net),
        BigDecimal.ZERO);
  }

  private static Turnover of(BilledLine... lines) {
    Billed bill =
        new Billed(
            Billed.Standing.INVOICE,
            "2026-0001",
            LocalDate.of(2026, 12, 31),
            "Ash",
            List.of(lines));
    return Turnover.of(
        List.of(bill),
        Map.of(
            "S",
            TaxKind.STANDARD,
            "Z",
            TaxKind.ZERO,
            "X",
            TaxKind.EXEMPT,
            "O",
            TaxKind.OUTSIDE_SCOPE));
  }

  private static YearMonth month(String text) {
    return YearMonth.parse(text);
  }

  @Test
  void exempt_work_and_work_outside_the_scope_are_no_turnover_and_work_without_a_code_is() {
    Turnover turnover =
        of(
            line("2026-01-10", "S", "1"),
            line("2026-01-11", "Z", "10"),
            line("2026-01-12", "X", "100"),
            line("2026-01-13", "O", "1000"),
            line("2026-01-14", "", "10000"));
    assertEquals(Map.of(month("2026-01"), new BigDecimal("10011")), turnover.months());
  }

  @Test
  void the_months_of_the_work_count_from_the_first_to_the_last() {
    Turnover turnover =
        of(
            line("2026-01-31", "S", "1"),
            line("2026-02-01", "S", "10"),
            line("2026-03-01", "S", "100"));
    assertEquals(new BigDecimal("11"), turnover.between(month("2026-01"), month("2026-02")));
    assertEquals(new BigDecimal("100"), turnover.between(month("2026-03"), month("2026-03")));
    assertEquals(BigDecimal.ZERO, turnover.between(month("2026-03"), month("2026-02")));
  }

  /** A month that ends after the period's last day is not over. */
  @ParameterizedTest
  @CsvSource({
    "2026-01-01,2026-12-31,2026-03",
    "2026-01-01,2026-03-31,2026-03",
    "2026-01-01,2026-03-30,2026-02",
    "2026-04-06,2027-04-05,2026-04",
    "2026-02-01,2026-02-28,2026-02",
    "2026-03-01,2026-03-31,2026-03"
  })
  void the_last_whole_month_with_turnover_is_looked_at(
      LocalDate first, LocalDate last, String expected) {
    Turnover turnover = of(line("2026-02-10", "S", "1"), line("2026-03-10", "S", "1"));
    assertEquals(month(expected), turnover.lastIn(new Period(first, last)));
  }

  @Test
  void a_book_without_turnover_is_looked_at_in_the_first_month() {
    assertEquals(
        month("2026-04"),
        of(line("2026-04-10", "X", "1"))
            .lastIn(new Period(LocalDate.of(2026, 4, 6), LocalDate.of(2027, 4, 5))));
  }
}
