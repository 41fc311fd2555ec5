package clenchbook.tax.income;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.tax.billed.Billed;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What is sold, as the bill says it (common practice, no source). */
class SoldTest {
  private static final LocalDate BILLED = LocalDate.of(2026, 3, 31);

  private static Sold sold(String net, String tax) {
    Billed bill =
        WrittenBill.invoice("1", "2026-03-31", WrittenBill.line(2, "2026-03-02", net, tax));
    return Sold.of(bill, bill.lines().get(0));
  }

  @Test
  void a_line_that_charges_tax_is_taxed_at_its_rate_on_the_bills_day() {
    assertEquals(
        new Sold(BILLED, "S", new BigDecimal("20").stripTrailingZeros(), true),
        sold("100.00", "20.00"));
    assertEquals(true, sold("-100.00", "-20.00").taxed());
  }

  @Test
  void a_line_that_charges_none_is_not() {
    assertEquals(new Sold(BILLED, "", BigDecimal.ZERO, false), sold("100.00", "0.00"));
  }
}
