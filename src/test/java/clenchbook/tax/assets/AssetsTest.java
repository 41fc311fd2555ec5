package clenchbook.tax.assets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Asset;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an asset is and what is left of it; the rules are the program's own, amounts on paper. */
class AssetsTest {
  private static final MinorUnit CENTS = new MinorUnit(2);
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));

  private static Asset asset(String cells) {
    return new WrittenBook().asset("Bought: 2024-05-01, " + cells).book().assets().get(0);
  }

  private static AssetClasses classes() {
    return new AssetClasses(
        WrittenRates.regime(),
        WrittenRates.lookup(
            "x/asset-classes, van, word, vehicle",
            "x/asset-classes, car, word, car",
            "x/asset-classes, motorcycle, word, motorcycle",
            "x/asset-classes, anvil, word, tools",
            "x/asset-classes, drill press, word, machine"));
  }

  @ParameterizedTest
  @CsvSource({
    "'Asset: Old thing, Class: Van', vehicle, vehicle, true",
    "'Asset: Old thing, Class: vans', vehicle, vehicle, true",
    "'Asset: Old van', vehicle, vehicle, true",
    "'Asset: Van 2019', vehicle, vehicle, true",
    "'Asset: Van (white)', vehicle, vehicle, true",
    "'Asset: Van; white', vehicle, vehicle, true",
    "'Asset: Shelves for van', '', equipment, false",
    "'Asset: Drill press', machine, equipment, false",
    "'Asset: Anvil, Class: no such word', tools, equipment, false",
    "'Asset: Van, Class: anvil', tools, vehicle, true",
    "'Asset: Motorcycle', motorcycle, motorcycle, true",
    "'Asset: Runabout, Class: car', car, car, true",
    "'Asset: Thing', '', equipment, false"
  })
  void an_asset_is_what_its_class_says_else_its_name(
      String cells, String found, String kind, boolean vehicle) {
    Asset asset = asset(cells);
    assertEquals(found, classes().find(asset).orElse(""));
    assertEquals(kind, classes().kind(asset));
    assertEquals(vehicle, classes().isVehicle(asset));
  }

  @ParameterizedTest
  @CsvSource({
    "'Cost: 1000, Business use %: 66.666', 666.66",
    "'Cost: 999.99', 999.99",
    "'Business use %: 50', 0.00"
  })
  void the_business_part_of_the_cost_counts(String cells, BigDecimal basis) {
    assertEquals(basis, AssetList.basis(asset("Asset: Anvil, " + cells), CENTS));
  }

  @Test
  void assets_stand_by_the_day_bought_and_those_bought_later_not_at_all() {
    WrittenBook book =
        new WrittenBook()
            .asset("Asset: late, Bought: 2027-01-01")
            .asset("Asset: last, Bought: 2026-12-31")
            .asset("Asset: first, Bought: 2024-01-01")
            .asset("Asset: second, Bought: 2024-01-01");
    assertEquals(
        List.of("first", "second", "last"),
        AssetList.until(YEAR.last(), book.book().assets()).stream().map(Asset::name).toList());
  }

  private static DepreciatedAsset depreciated(String cells) {
    return new DepreciatedAsset(
        asset("Asset: Anvil, Cost: 1000, Business use %: 80, " + cells),
        "tools",
        "half-year",
        false,
        new BigDecimal("800.00"),
        new BigDecimal("300.00"),
        new BigDecimal("200.00"),
        Optional.empty());
  }

  @Test
  void what_is_left_is_the_basis_less_all_that_was_taken() {
    assertEquals(Optional.of(new BigDecimal("300.00")), depreciated("Cost: 1000").remaining());
    assertEquals(DepreciatedAsset.DEPRECIATION, depreciated("Cost: 1000").line());
  }

  /** Four fifths of 500.50 are 400.40, less 300.00; of 100.00 they are 80.00. */
  @ParameterizedTest
  @CsvSource({
    "'Sold: 2026-06-30, Proceeds: 500.50', 100.40",
    "'Sold: 2026-01-01, Proceeds: 100', -220.00",
    "'Sold: 2026-12-31', -300.00",
    "'Sold: 2025-12-31, Proceeds: 500', none",
    "'Sold: 2027-01-01, Proceeds: 500', none",
    "'Proceeds: 500', none"
  })
  void a_sale_within_the_year_gains_or_loses_against_what_was_left(String cells, String gain) {
    assertEquals(gain, depreciated(cells).gain(YEAR).map(BigDecimal::toPlainString).orElse("none"));
  }

  @Test
  void an_asset_without_a_share_is_all_the_businesss() {
    DepreciatedAsset whole =
        new DepreciatedAsset(
            asset("Asset: Anvil, Cost: 1000, Sold: 2026-06-30, Proceeds: 900"),
            "tools",
            "half-year",
            false,
            new BigDecimal("1000.00"),
            new BigDecimal("0.00"),
            new BigDecimal("200.00"),
            Optional.empty());
    assertEquals(Optional.of(new BigDecimal("100.00")), whole.gain(YEAR));
  }

  @Test
  void where_nothing_depreciates_it_a_sale_says_nothing() {
    DepreciatedAsset without =
        DepreciatedAsset.without(
            asset("Asset: Anvil, Cost: 1000, Sold: 2026-06-30, Proceeds: 900"),
            new BigDecimal("1000.00"),
            "tools",
            false);
    assertEquals(Optional.empty(), without.gain(YEAR));
    assertEquals(Optional.of(new BigDecimal("1000.00")), without.remaining());
    assertEquals(new BigDecimal("0.00"), without.thisYear());
  }

  private static DepreciatedAsset byMiles(String taken, String unknown) {
    return DepreciatedAsset.byMileage(
        asset("Asset: Van, Cost: 9000, Sold: 2026-06-30, Proceeds: 2000"),
        new BigDecimal("9000.00"),
        "vehicle",
        new TakenByMileage(new BigDecimal(taken), Wording.literal(unknown), Message.NONE));
  }

  @Test
  void miles_take_the_basis_down_to_nothing_and_no_further() {
    assertEquals(Optional.of(new BigDecimal("1000.00")), byMiles("8000.00", "").remaining());
    assertEquals(Optional.of(new BigDecimal("0.00")), byMiles("9500.00", "").remaining());
    assertEquals(Optional.of(new BigDecimal("1000.00")), byMiles("8000.00", "").gain(YEAR));
  }

  @Test
  void miles_that_are_not_known_leave_both_open() {
    assertEquals(Optional.empty(), byMiles("0", "miles of 2024").remaining());
    assertEquals(Optional.empty(), byMiles("0", "miles of 2024").gain(YEAR));
    assertEquals(
        false, new TakenByMileage(BigDecimal.ONE, Wording.literal("miles"), Message.NONE).known());
    assertEquals(true, new TakenByMileage(BigDecimal.ONE, Wording.NONE, Message.NONE).known());
  }
}
