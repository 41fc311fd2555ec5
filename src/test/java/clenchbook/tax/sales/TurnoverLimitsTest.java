package clenchbook.tax.sales;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.WrittenRates;
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

/** The months over which a limit counts, its tolerance and its pace, on an invented table. */
class TurnoverLimitsTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));

  /** Amounts by month, as {@code "2026-01 100"}. */
  private static Turnover turnover(String... months) {
    TreeMap<YearMonth, BigDecimal> all = new TreeMap<>();
    for (String month : months) {
      all.put(YearMonth.parse(month.substring(0, 7)), new BigDecimal(month.substring(8)));
    }
    return new Turnover(all);
  }

  private static TurnoverGauge gauge(Turnover turnover, String... rows) {
    return TurnoverGauge.of("x", YEAR, turnover, WrittenRates.lookup(rows)).get(0);
  }

  private static String said(TurnoverGauge gauge) {
    return InEnglish.filed(gauge.said());
  }

  @ParameterizedTest
  @CsvSource({
    "rolling twelve months,2025-09,2026-08",
    "calendar year,2026-01,2026-08",
    "year before,2025-01,2025-12",
    "calendar quarter,2026-07,2026-08",
    "four calendar quarters,2025-10,2026-08"
  })
  void each_limit_counts_over_its_own_months(String window, YearMonth first, YearMonth last) {
    TurnoverGauge gauge =
        gauge(
            turnover("2026-08 1"),
            "x/turnover, limit, money, 1000",
            "x/turnover, period, word, " + window);
    assertEquals(first, gauge.first());
    assertEquals(last, gauge.last());
  }

  @Test
  void without_a_word_for_its_months_a_limit_counts_over_twelve_of_them() {
    TurnoverGauge gauge = gauge(turnover("2026-08 1"), "x/turnover, limit, money, 1000");
    assertEquals(YearMonth.of(2025, 9), gauge.first());
    assertEquals(Optional.empty(), gauge.then());
    assertEquals(0, gauge.tolerated().compareTo(new BigDecimal("1000")));
  }

  @Test
  void a_limit_with_a_word_of_its_own_has_its_own_months_and_the_tables_where_it_has_none() {
    List<TurnoverGauge> gauges =
        TurnoverGauge.of(
            "x",
            YEAR,
            turnover("2026-08 1"),
            WrittenRates.lookup(
                "x/turnover, limit goods, money, 1000",
                "x/turnover, limit work, money, 500",
                "x/turnover, period, word, calendar year",
                "x/turnover, period work, word, year before",
                "x/turnover, then work, word, tax from then"));
    assertEquals(
        List.of("1000 2026-01 ", "500 2025-01 tax from then"),
        gauges.stream()
            .map(
                each ->
                    each.limit().value()
                        + " "
                        + each.first()
                        + " "
                        + InEnglish.filed(each.changes()))
            .toList());
  }

  @Test
  void a_limit_that_was_passed_names_the_month_and_no_later_one() {
    TurnoverGauge gauge =
        gauge(
            turnover("2026-01 600", "2026-02 401", "2026-03 1"),
            "x/turnover, limit, money, 1000",
            "x/turnover, period, word, calendar year",
            "x/turnover, then, word, tax is due");
    assertEquals(Optional.of(YearMonth.of(2026, 2)), gauge.passed());
    assertEquals(Optional.empty(), gauge.passes());
    assertEquals(
        "limit: 1002 of 1000 used, 100.2 %, from 2026-01 to 2026-03."
            + " It was passed at the end of 2026-02. Then: tax is due.",
        said(gauge));
  }

  /** A limit that begins in March does not judge February. */
  @Test
  void a_limit_judges_only_months_in_which_it_is_in_force() {
    TurnoverGauge gauge =
        gauge(
            turnover("2026-02 2000", "2026-04 1"),
            "x/turnover, limit, money, 1000, limit, 2026-03-31");
    assertEquals(Optional.of(YearMonth.of(2026, 3)), gauge.passed());
  }

  /** Of three months 100, 200, 300 the pace is 200: after 600, 800 and 1000 the third passes. */
  @Test
  void the_pace_is_the_mean_of_the_last_three_months() {
    String[] rows = {"x/turnover, limit, money, 1000", "x/turnover, period, word, calendar year"};
    assertEquals(
        Optional.of(YearMonth.of(2026, 7)),
        gauge(turnover("2026-01 1", "2026-02 99", "2026-03 200", "2026-04 300"), rows).passes());
    assertEquals(
        Optional.of(YearMonth.of(2026, 4)),
        gauge(turnover("2026-02 400", "2026-03 400"), rows).passes(),
        "two months: 400 each");
    assertEquals(
        Optional.of(YearMonth.of(2026, 3)),
        gauge(turnover("2026-02 501"), rows).passes(),
        "one month");
  }

  @Test
  void a_quarter_to_come_counts_only_its_own_months() {
    String[] rows = {
      "x/turnover, limit, money, 1000", "x/turnover, period, word, calendar quarter"
    };
    assertEquals(Optional.of(YearMonth.of(2026, 6)), gauge(turnover("2026-03 340"), rows).passes());
    assertEquals(Optional.empty(), gauge(turnover("2026-03 333"), rows).passes());
  }

  /** 25 months of 40 are 1000; of the twelve months before the limit is not passed. */
  @Test
  void nobody_looks_further_ahead_than_two_years() {
    String[] rows = {"x/turnover, limit, money, 479"};
    assertEquals(Optional.of(YearMonth.of(2026, 12)), gauge(turnover("2026-01 40"), rows).passes());
    assertEquals(
        Optional.empty(), gauge(turnover("2026-01 40"), "x/turnover, limit, money, 480").passes());
  }

  @Test
  void the_year_before_has_no_pace() {
    TurnoverGauge gauge =
        gauge(
            turnover("2025-05 900", "2026-01 2000"),
            "x/turnover, limit, money, 1000",
            "x/turnover, period, word, year before");
    assertEquals(new BigDecimal("900"), gauge.turnover());
    assertEquals(Optional.empty(), gauge.passes());
    assertTrue(said(gauge).endsWith("not passed within two years."), said(gauge));
  }

  @Test
  void a_tolerance_and_what_rests_on_memory_are_said() {
    TurnoverGauge gauge =
        gauge(
            turnover("2026-01 54.96"),
            "x/turnover, limit, money, 1000, The limit, 2000-01-01, 2099-12-31, from memory",
            "x/turnover, tolerance, percent, 10",
            "x/turnover, then, word, tax, then, 2000-01-01, 2099-12-31, carried over");
    assertEquals(
        "The limit: 55 of 1000 (from memory) used, 5.5 %, from 2025-02 to 2026-01."
            + " At the pace of the last months it is not passed within two years."
            + " Tolerated within the year: up to 1100."
            + " Then: tax (carried over from the last year seen).",
        said(gauge));
  }

  @Test
  void a_table_that_has_ended_is_missed_by_name_and_one_that_never_was_is_not() {
    RateLookup ended =
        WrittenRates.lookup("x/turnover, limit, money, 1000, limit, 2000-01-01, 2025-12-31");
    assertEquals(List.of(), TurnoverGauge.of("x", YEAR, turnover("2026-01 1"), ended));
    assertEquals(1, ended.missing().size());
    RateLookup other = WrittenRates.lookup("y/turnover, limit, money, 1000");
    assertEquals(List.of(), TurnoverGauge.of("x", YEAR, turnover("2026-01 1"), other));
    assertEquals(List.of(), other.missing());
    RateLookup there = WrittenRates.lookup("x/turnover, limit, money, 1000");
    assertEquals(1, TurnoverGauge.of("x", YEAR, turnover("2026-01 1"), there).size());
    assertEquals(List.of(), there.missing());
  }
}
