package clenchbook.tax.jurisdiction.au;

import static clenchbook.tax.Published.number;
import static clenchbook.tax.Published.rate;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import clenchbook.tax.Published;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published examples of Australian law and its tax office, by their sources. */
class AustralianExamplesTest {
  private static final MinorUnit CENT = MinorUnit.of("AUD");
  private static final BigDecimal CAP = rate("au/vehicle", "cap", "2025-07-01");

  /** ITAA 1997 s.28-25(2), example: 5,085 km driven, 5,000 count, 85 are lost. */
  @Test
  void kilometres_beyond_the_cap_are_lost() {
    List<BigDecimal> counted =
        CentsPerKilometre.counted(List.of(number("4000"), number("1085"), number("10")), CAP);
    assertEquals(List.of(number("4000"), number("1000"), number("0")), counted);
  }

  /** Cents per kilometre as a published calculation prints it: 6,000 km in 2024-25 are 4,400. */
  @Test
  void six_thousand_kilometres_are_four_thousand_four_hundred() {
    BigDecimal counted = CentsPerKilometre.counted(List.of(number("6000")), CAP).get(0);
    BigDecimal amount = CENT.round(counted.multiply(rate("au/vehicle", "business", "2025-06-30")));
    assertEquals(number("4400.00"), amount);
  }

  /** ato.gov.au: Cents per kilometre method (2024-07-03); 2025-26: LI 2024/19. */
  @ParameterizedTest
  @CsvSource({
    "2018-06-30,0.66",
    "2018-07-01,0.68",
    "2020-06-30,0.68",
    "2022-06-30,0.72",
    "2022-07-01,0.78",
    "2023-07-01,0.85",
    "2024-06-30,0.85",
    "2024-07-01,0.88",
    "2026-06-30,0.88"
  })
  void the_rate_of_the_day_driven(String day, BigDecimal rate) {
    assertEquals(rate, rate("au/vehicle", "business", day));
  }

  /** Taxation Administration Act 1953, Schedule 1, s.388-85, example: 8,496.73 is 8,496. */
  @Test
  void cents_are_left_off_never_rounded_up() {
    assertEquals(number("8496"), WholeDollars.cut(number("8496.73")));
    assertEquals(number("505"), WholeDollars.cut(number("-505.99")));
  }

  /** GST within a price is one eleventh: 715 with GST hold 65 (smartdigits.com.au; arithmetic). */
  @Test
  void one_eleventh_of_a_price_is_gst() {
    BigDecimal gst = rate("au/gst", "standard", "2025-07-01").movePointLeft(2);
    BigDecimal net = CENT.round(number("715").divide(gst.add(BigDecimal.ONE)));
    assertEquals(number("65.00"), number("715.00").subtract(net));
  }

  /** ITAA 1997 s.328-210, example Amanda's Graphics, 2014-15: 8,500 + 1,600 − 9,600 = 500. */
  @Test
  void a_low_pool_is_deducted_whole() {
    SmallBusinessPool year =
        pool(
            "8500", CENT.round(number("2000").multiply(number("0.80"))).toString(), "9600", "1000");
    assertEquals(number("500.00"), year.deduction());
    assertEquals(0, year.closing().signum());
  }

  /** The same without the sale: 30 % of 8,500 and 15 % of 1,600 (s.328-190), 2,550 + 240. */
  @Test
  void a_pool_above_the_limit_takes_thirty_and_fifteen_per_cent() {
    SmallBusinessPool year = pool("8500", "1600", "0", "1000");
    assertEquals(number("2790.00"), year.deduction());
    assertEquals(0, number("7310").compareTo(year.closing()));
  }

  /** s.328-215: what is received beyond the whole pool is income. */
  @Test
  void proceeds_beyond_the_pool_are_income() {
    SmallBusinessPool year = pool("1000", "0", "1400", "20000");
    assertEquals(0, number("400").compareTo(year.income()));
    assertEquals(number("0.00"), year.deduction());
    assertEquals(0, year.closing().signum());
  }

  private static SmallBusinessPool pool(String opening, String added, String sold, String low) {
    return SmallBusinessPool.of(
        number(opening),
        number(added),
        number(sold),
        rate("au/depreciation", "pool", "2025-06-30").movePointLeft(2),
        rate("au/depreciation", "pool first year", "2025-06-30").movePointLeft(2),
        number(low),
        CENT);
  }

  /**
   * Thresholds of the instant write-off by day: ato.gov.au, jhbstnorwest.com.au, accurium.com.au.
   */
  @ParameterizedTest
  @CsvSource({
    "limit until 2020,2016-07-28,20000",
    "limit until 2020,2019-01-29,25000",
    "limit until 2020,2019-04-02,30000",
    "limit,2023-07-01,20000",
    "limit,2025-06-30,20000",
    "limit,2026-06-30,20000",
    "limit,2026-07-01,1000"
  })
  void write_off_limits_by_the_day(String code, String day, BigDecimal limit) {
    assertEquals(limit, rate("au/depreciation", code, day));
  }

  @Test
  void no_limit_is_known_for_a_year_that_nobody_looked_up() {
    assertFalse(Published.isKnown("au/depreciation", "limit", "2099-07-01"));
    assertFalse(Published.isKnown("au/vehicle", "business", "2099-07-01"));
  }
}
