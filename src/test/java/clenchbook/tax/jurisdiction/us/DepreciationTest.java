package clenchbook.tax.jurisdiction.us;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Asset;
import clenchbook.book.SourceRow;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearStart;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DepreciationTest {

  private static Asset asset(
      int row, String bought, String cost, String kind, String use, String sold) {
    return new Asset(
        new SourceRow("Assets", 5, row, Map.of()),
        "thing " + row,
        LocalDate.parse(bought),
        Optional.of(new BigDecimal(cost)),
        kind,
        use.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(use)),
        sold.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(sold)),
        Optional.empty());
  }

  private static List<DepreciatedAsset> in(int year, Asset... assets) {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    TaxYear taxYear = year(year);
    return new Depreciation(List.of(assets), taxYear, rates, new MinorUnit(2)).register();
  }

  private static List<BigDecimal> life(int from, int years, Asset... assets) {
    List<BigDecimal> figures = new ArrayList<>();
    for (int year = from; year < from + years; year++) {
      figures.add(in(year, assets).get(0).thisYear());
    }
    return figures;
  }

  private static List<BigDecimal> figures(String... texts) {
    return Stream.of(texts).map(BigDecimal::new).toList();
  }

  /**
   * IRS Publication 946, chapter 4, Example 1: 1,000, 5-year property bought in February; years 3
   * to 6 from memory.
   */
  @Test
  void publication_946_example_1() {
    assertEquals(
        figures("200.00", "320.00", "192.00", "115.20", "115.20", "57.60"),
        life(2020, 6, asset(2, "2020-02-10", "1000", "5-year", "", "")));
  }

  /** Table A-1, 7-year column on 10,000 (arithmetic). */
  @Test
  void seven_year_property_by_the_table() {
    assertEquals(
        figures("1429.00", "2449.00", "1749.00", "1249.00", "893.00", "892.00", "893.00", "446.00"),
        life(2018, 8, asset(2, "2018-05-10", "10000", "anvil", "", "")));
  }

  @Test
  void nothing_is_left_to_take_after_the_last_year() {
    DepreciatedAsset done = in(2026, asset(2, "2020-02-10", "1000", "5-year", "", "")).get(0);
    assertEquals(new BigDecimal("0.00"), done.thisYear());
    assertEquals(Optional.of(new BigDecimal("0.00")), done.remaining());
  }

  @Test
  void only_the_business_part_counts() {
    DepreciatedAsset half = in(2025, asset(2, "2025-02-10", "1000", "5-year", "80", "")).get(0);
    assertEquals(new BigDecimal("160.00"), half.thisYear());
  }

  /** IRC 168(d)(3): 40 % is not more than 40 %. */
  @ParameterizedTest
  @CsvSource({"4000,half-year", "4001,quarter 4"})
  void the_mid_quarter_test_asks_for_more_than_forty_per_cent(
      String lastQuarter, String convention) {
    List<DepreciatedAsset> found =
        in(
            2025,
            asset(2, "2025-03-01", "6000", "7-year", "", ""),
            asset(3, "2025-10-01", lastQuarter, "7-year", "", ""));
    assertEquals(convention, found.get(1).convention());
  }

  /** Table A-5: 5-year property in the fourth quarter, 5.00 then 38.00 per cent. */
  @Test
  void a_truck_in_december_takes_the_fourth_quarter_table() {
    assertEquals(
        figures("2000.00", "15200.00"),
        life(2024, 2, asset(2, "2024-12-20", "40000", "truck", "100", "")));
  }

  /** IRC 280F(b), from memory: a vehicle used half or less for business goes straight line. */
  @Test
  void a_vehicle_used_half_for_business_goes_straight_line() {
    DepreciatedAsset found = in(2025, asset(2, "2025-02-10", "10000", "truck", "50", "")).get(0);
    assertEquals("straight line", found.convention());
    assertEquals(new BigDecimal("500.00"), found.thisYear());
  }

  /**
   * Publication 946, sale before the end of the recovery period, half-year convention, from memory.
   */
  @Test
  void the_year_of_sale_takes_half() {
    Asset sold = asset(2, "2023-02-10", "1000", "5-year", "", "2025-03-01");
    assertEquals(figures("200.00", "320.00", "96.00", "0.00"), life(2023, 4, sold));
  }

  @Test
  void an_unknown_class_is_kept_without_a_figure() {
    DepreciatedAsset found = in(2025, asset(2, "2025-02-10", "1000", "heirloom", "", "")).get(0);
    assertEquals("", found.kind());
    assertEquals(new BigDecimal("0.00"), found.thisYear());
  }

  @Test
  void an_anvil_older_than_the_tables_is_kept_without_a_fault() {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    TaxYear year = year(2025);
    Asset anvil = asset(2, "1979-02-10", "400", "anvil", "", "");
    new Depreciation(List.of(anvil), year, rates, new MinorUnit(2)).register();
    assertEquals(List.of(), rates.missing());
  }

  @Test
  void a_year_the_tables_lack_gives_no_depreciation_and_names_the_table() {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    TaxYear year = year(2031);
    Asset forge = asset(2, "2031-02-10", "400", "forge", "", "");
    List<DepreciatedAsset> found =
        new Depreciation(List.of(forge), year, rates, new MinorUnit(2)).register();
    assertEquals(new BigDecimal("0.00"), found.get(0).thisYear());
    assertEquals("us/depreciation", rates.missing().get(0).table());
  }

  /** By hand: 1,000 less 200, 320 and 96 leaves 384; 500 of proceeds is 116 above it. */
  @Test
  void a_sale_shows_its_gain_over_what_was_left() {
    Asset bought = asset(2, "2023-02-10", "1000", "5-year", "", "2025-03-01");
    Asset sold =
        new Asset(
            bought.source(),
            bought.name(),
            bought.bought(),
            bought.cost(),
            bought.assetClass(),
            bought.businessUsePercent(),
            bought.sold(),
            Optional.of(new BigDecimal("500")));
    Period year = new Period(LocalDate.of(2025, 1, 1), LocalDate.of(2025, 12, 31));
    assertEquals(Optional.of(new BigDecimal("116.00")), in(2025, sold).get(0).gain(year));
  }

  private static TaxYear year(int year) {
    Regime regime = UsJurisdiction.REGIME;
    return TaxYear.of(
        regime, year, new YearStart(RateFiles.bundled().table("us/year"), Optional.empty()));
  }
}
