package clenchbook.tax.sales;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.InEnglish;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of a limit is used, and when it will be passed. */
class TurnoverGaugeTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));

  /** The same turnover in each month from one to another. */
  private static Turnover monthly(String from, String to, String amount) {
    TreeMap<YearMonth, BigDecimal> months = new TreeMap<>();
    for (YearMonth month = YearMonth.parse(from);
        !month.isAfter(YearMonth.parse(to));
        month = month.plusMonths(1)) {
      months.put(month, new BigDecimal(amount));
    }
    return new Turnover(months);
  }

  private static List<TurnoverGauge> gauges(String country, Turnover turnover) {
    return TurnoverGauge.of(country, YEAR, turnover, new RateLookup(RateFiles.bundled()));
  }

  /** By hand: 6 months of 10,000 are 60,000 of 90,000; three more reach it, the fourth passes. */
  @Test
  void a_young_book_passes_the_limit_at_its_own_pace() {
    TurnoverGauge gauge = gauges("uk", monthly("2026-01", "2026-06", "10000")).get(0);
    assertEquals(new BigDecimal("60000"), gauge.turnover());
    assertEquals(new BigDecimal("66.7"), gauge.percent());
    assertEquals(Optional.of(YearMonth.of(2026, 10)), gauge.passes());
    assertEquals(Optional.empty(), gauge.passed());
    assertTrue(InEnglish.filed(gauge.said()).contains("passed in 2026-10"));
  }

  /** By hand: at 7,500 a month twelve months are 90,000, which is not above 90,000. */
  @Test
  void the_limit_itself_is_not_above_the_limit() {
    TurnoverGauge gauge = gauges("uk", monthly("2025-01", "2026-12", "7500")).get(0);
    assertEquals(Optional.empty(), gauge.passed());
    assertEquals(Optional.empty(), gauge.passes());
    TurnoverGauge more = gauges("uk", monthly("2025-01", "2026-12", "7500.01")).get(0);
    assertEquals(Optional.of(YearMonth.of(2026, 1)), more.passed());
  }

  /**
   * wko.at, Kleinunternehmerregelung: 52,000 and then 8,000 stay exempt, because 60,000 is within
   * the tolerance of 10 % above 55,000, which ends at 60,500.
   */
  @Test
  void austria_tolerates_ten_per_cent_above_its_limit() {
    TreeMap<YearMonth, BigDecimal> months = new TreeMap<>();
    months.put(YearMonth.of(2026, 3), new BigDecimal("52000"));
    months.put(YearMonth.of(2026, 5), new BigDecimal("8000"));
    TurnoverGauge gauge = gauges("at", new Turnover(months)).get(0);
    assertEquals(0, new BigDecimal("60500").compareTo(gauge.tolerated()));
    assertTrue(gauge.turnover().compareTo(gauge.tolerated()) < 0);
    assertEquals(Optional.of(YearMonth.of(2026, 5)), gauge.passed());
    assertTrue(
        InEnglish.filed(gauge.said()).contains("up to 60500"), InEnglish.filed(gauge.said()));
  }

  /** kvk.nl: the small-business scheme counts the calendar year, so December starts no new one. */
  @Test
  void the_netherlands_count_the_calendar_year() {
    TurnoverGauge gauge = gauges("nl", monthly("2025-01", "2026-08", "2000")).get(0);
    assertEquals(YearMonth.of(2026, 1), gauge.first());
    assertEquals(new BigDecimal("16000"), gauge.turnover());
    assertEquals(Optional.of(YearMonth.of(2026, 11)), gauge.passes());
  }

  /** Finance Act 2024 (as reported): 42,500 for services, 85,000 for goods from 2025. */
  @Test
  void ireland_has_a_limit_for_services_and_one_for_goods() {
    assertEquals(
        List.of("42500", "85000"),
        gauges("ie", monthly("2026-01", "2026-06", "1000")).stream()
            .map(gauge -> gauge.limit().value())
            .toList());
  }

  /** A limit from memory says so beside the figure. */
  @Test
  void a_limit_from_memory_says_so() {
    TurnoverGauge gauge = gauges("nz", monthly("2026-01", "2026-06", "1000")).get(0);
    assertTrue(
        InEnglish.filed(gauge.said()).contains("60000 (from memory)"),
        InEnglish.filed(gauge.said()));
  }

  @ParameterizedTest
  @CsvSource({"us", "fr", "''"})
  void a_country_without_a_table_has_no_gauge(String country) {
    assertEquals(List.of(), gauges(country, monthly("2026-01", "2026-06", "1000")));
  }
}
