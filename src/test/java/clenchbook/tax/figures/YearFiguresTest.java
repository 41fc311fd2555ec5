package clenchbook.tax.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.TaxKind;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.BilledBook;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.income.Income;
import clenchbook.tax.income.IncomeLines;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.vehicle.MileageChecks;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Vehicle;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the lines are made of, before any country orders it; sums on paper. */
class YearFiguresTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
  private static final Regime REGIME = WrittenRates.regime();
  private static final MinorUnit PENCE = new MinorUnit(2);
  private static final RateTables RATES =
      WrittenRates.tables(
          "x/lines, work, line, 1",
          "x/categories, fuel, word, vehicle",
          "x/categories, parking, word, parking and tolls",
          "x/categories, rent, word, rent");

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .setting(Setting.TAX_NUMBER, "GB1")
        .setting(Setting.DISTANCE_UNIT, "mile")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .tax("Code: X, Name: none, Rate %: 0, Kind: exempt")
        .work("Work: Trim, Tax: S, Price: 100")
        .visit("Horse: Bess, Owner: Ruth, Work: Trim, Charge: list, Date: 2025-12-31")
        .visit("Horse: Bess, Owner: Ruth, Work: Trim, Charge: list, Date: 2026-01-10")
        .purchase("Date: 2026-02-01, Supplier: Depot, Item: keg, Quantity: 9, Gross: 40")
        .purchase("Date: 2026-02-02, Supplier: Pump, Category: Fuel, Gross: 80")
        .purchase("Date: 2026-02-03, Supplier: City, Category: Parking, Gross: 4")
        .purchase("Date: 2026-02-04, Supplier: Hall, Category: Rent, Gross: 300")
        .asset("Asset: Anvil, Bought: 2026-01-15, Cost: 1000")
        .asset("Asset: Van, Bought: 2026-01-15, Cost: 9000")
        .asset("Asset: Vice, Bought: 2016-01-15, Cost: 50");
  }

  private static DepreciatedAsset asset(WrittenBook book, int place, boolean vehicle, String year) {
    return new DepreciatedAsset(
        book.book().assets().get(place),
        "kind",
        "straight line",
        vehicle,
        new BigDecimal("1000.00"),
        new BigDecimal("0.00"),
        new BigDecimal(year),
        Optional.empty());
  }

  private static YearFigures figures(boolean byMileage, Optional<Integer> quarter) {
    WrittenBook book = book();
    var register = YearBook.run(book, List.of("2025-12", "2026-01"));
    YearEndInput input =
        new YearEndInput(
            book.jobs(),
            register,
            new TaxYear(REGIME, 2026, YEAR, false),
            quarter,
            RATES,
            StockValue.NONE);
    RateLookup rates = new RateLookup(RATES);
    TaxBasis basis = new TaxBasis(false, true, Bases.INVOICED);
    var billed = BilledBook.of(book.jobs(), register);
    Expenses expenses =
        Expenses.of(
            book.book(), YEAR, basis, false, new CategoryMap(REGIME, YEAR.last(), rates), Map.of());
    Vehicle vehicle =
        new Vehicle(
            new MileageAllowance(
                List.of(trip("2026-03-01", "7.00"), trip("2027-01-01", "1.00")), List.of()),
            List.of(trip("2026-02-02", "80.00")),
            BigDecimal.ONE,
            Wording.NONE,
            byMileage);
    return new YearFigures(
        input,
        billed,
        YEAR,
        basis,
        Income.of(
            input,
            billed,
            YEAR,
            basis,
            new LineScheme(REGIME, YEAR.last(), rates),
            IncomeLines.of(REGIME.codes())),
        expenses,
        MileageLog.of(List.of(), YEAR, new MileageChecks(DistanceUnit.MILE, rates, YEAR.last())),
        vehicle,
        List.of(
            asset(book, 0, false, "142.90"),
            asset(book, 1, true, "1800.00"),
            asset(book, 2, false, "0.00")),
        List.of());
  }

  private static LineItem trip(String day, String amount) {
    BigDecimal money = new BigDecimal(amount);
    return new LineItem(
        "vehicle", "Trips", 2, LocalDate.parse(day), "Home to Oak", money, PENCE.zero(), money);
  }

  private static List<String> written(List<LineItem> items) {
    return items.stream()
        .map(item -> item.code() + " " + item.who() + " " + item.net().toPlainString())
        .toList();
  }

  @Test
  void goods_other_costs_and_the_vehicle_stand_apart_and_parking_goes_with_the_vehicle() {
    YearFigures figures = figures(true, Optional.empty());
    assertEquals(List.of("goods bought Depot 40.00"), written(figures.goods()));
    assertEquals(List.of("rent Hall 300.00"), written(figures.otherCosts()));
    assertEquals(
        List.of("vehicle Home to Oak 7.00", "vehicle City 4.00"), written(figures.vehicleLine()));
    assertEquals(
        List.of("vehicle Home to Oak 80.00", "vehicle City 4.00"),
        written(figures(false, Optional.empty()).vehicleLine()));
  }

  @Test
  void a_vehicle_is_depreciated_only_where_its_actual_cost_counts_and_a_quarter_depreciates_none() {
    assertEquals(
        List.of("depreciation Anvil 142.90"),
        written(figures(true, Optional.empty()).depreciation()));
    assertEquals(
        List.of("depreciation Anvil 142.90", "depreciation Van 1800.00"),
        written(figures(false, Optional.empty()).depreciation()));
    assertEquals(List.of(), figures(false, Optional.of(1)).depreciation());
    LineItem item = figures(true, Optional.empty()).depreciation().get(0);
    assertEquals(
        List.of("Assets", "2", "2026-12-31", "0.00", "142.90"),
        List.of(
            item.sheet(),
            String.valueOf(item.row()),
            item.date().toString(),
            item.tax().toPlainString(),
            item.gross().toPlainString()));
  }

  @Test
  void sales_are_all_that_was_billed_and_visits_count_in_the_period_of_the_work() {
    YearFigures figures = figures(true, Optional.empty());
    assertEquals(List.of("S Ruth 100.00", "S Ruth 100.00"), written(figures.sales()));
    assertEquals(new BigDecimal("100.00"), figures.billedForVisits());
  }

  @Test
  void the_regime_its_unit_and_its_tax_codes_come_from_the_book() {
    YearFigures figures = figures(true, Optional.empty());
    assertEquals(REGIME, figures.regime());
    assertEquals(PENCE.zero(), figures.unit().zero());
    assertEquals(DistanceUnit.MILE, figures.distanceUnit());
    assertEquals(Map.of("S", TaxKind.STANDARD, "X", TaxKind.EXEMPT), figures.taxKinds());
    assertEquals("VAT", figures.taxRate("S").orElseThrow().name());
    assertEquals(Optional.empty(), figures.taxRate("Q"));
    assertTrue(figures.wholeYear());
    assertFalse(figures(true, Optional.of(1)).wholeYear());
  }
}
