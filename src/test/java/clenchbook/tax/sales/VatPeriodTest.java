package clenchbook.tax.sales;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.lines.LineItem;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sums of one period of value-added tax; figures on paper. */
class VatPeriodTest {
  private static final MinorUnit PENCE = new MinorUnit(2);
  private static final Period QUARTER =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 3, 31));

  private static LineItem item(String day, String net, String tax) {
    BigDecimal gross = new BigDecimal(net).add(new BigDecimal(tax));
    return new LineItem(
        "",
        "Visits",
        2,
        LocalDate.parse(day),
        "Ash",
        new BigDecimal(net),
        new BigDecimal(tax),
        gross);
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  @Test
  void only_what_lies_within_the_period_counts_first_and_last_day_with_it() {
    VatPeriod found =
        VatPeriod.of(
            QUARTER,
            List.of(
                item("2025-12-31", "1000", "200"),
                item("2026-01-01", "100", "20"),
                item("2026-03-31", "50", "10"),
                item("2026-04-01", "1000", "200")),
            List.of(item("2026-02-01", "40", "8"), item("2026-04-01", "500", "100")),
            PENCE);
    assertEquals(
        new VatPeriod(QUARTER, number("150.00"), number("30.00"), number("40.00"), number("8.00")),
        found);
    assertEquals(number("22.00"), found.payable());
    assertEquals(number("180.00"), found.flatRateTurnover());
  }

  /** 180 at 7.5 % are 13.50; 181.30 at 7.5 % are 13.5975, rounded half up to 13.60. */
  @Test
  void a_flat_rate_is_taken_of_turnover_with_tax() {
    BigDecimal factor = number("0.075");
    VatPeriod even =
        VatPeriod.of(QUARTER, List.of(item("2026-01-01", "150", "30")), List.of(), PENCE);
    assertEquals(number("13.50"), even.flatRateTax(factor, PENCE));
    VatPeriod odd =
        VatPeriod.of(QUARTER, List.of(item("2026-01-01", "151.10", "30.20")), List.of(), PENCE);
    assertEquals(number("13.60"), odd.flatRateTax(factor, PENCE));
  }

  @Test
  void a_period_is_used_once_anything_was_sold_or_bought() {
    List<LineItem> one = List.of(item("2026-01-01", "1", "0"));
    assertFalse(VatPeriod.of(QUARTER, List.of(), List.of(), PENCE).isUsed());
    assertTrue(VatPeriod.of(QUARTER, one, List.of(), PENCE).isUsed());
    assertTrue(VatPeriod.of(QUARTER, List.of(), one, PENCE).isUsed());
  }

  @Test
  void pence_are_left_off_toward_nothing() {
    assertEquals(number("149"), VatPeriod.wholePounds(number("149.99")));
    assertEquals(number("-149"), VatPeriod.wholePounds(number("-149.99")));
  }
}
