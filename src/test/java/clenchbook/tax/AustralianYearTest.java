package clenchbook.tax;

import static clenchbook.tax.YearBook.amount;
import static clenchbook.tax.YearBook.end;
import static clenchbook.tax.YearBook.says;
import static clenchbook.tax.YearBook.table;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An Australian year by hand, July 2025 to June 2026. */
class AustralianYearTest {
  static final CountryYear YEAR =
      new CountryYear(
          "au",
          2025,
          List.of("2025-07", "2025-08", "2025-09", "2025-10", "2025-11"),
          StockValue.NONE,
          AustralianYearTest::book);

  private static WrittenBook book(String basis) {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "au")
        .setting(Setting.TAX_BASIS, basis)
        .setting(Setting.TAX_NUMBER, "ABN 00 000 000 000")
        .setting(Setting.CURRENCY, "AUD")
        .setting(Setting.PRICES_INCLUDE_TAX, "yes")
        .work("Work: Set, Tax: G, Price: 220")
        .work("Work: Trim, Tax: G, Price: 55")
        .tax("Code: G, Name: GST, Rate %: 10, Kind: standard")
        .visit("Date: 2025-07-05, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .visit("Date: 2025-08-20, Horse: Duke, Owner: Birch, Work: Set, Charge: list")
        .visit("Date: 2025-09-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list, Paid: 220")
        .visit("Date: 2025-09-11, Horse: Moss, Owner: Cedar, Work: Trim, Charge: list, Paid: 55")
        .visit("Date: 2025-11-02, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .payment("Date: 2025-08-01, Owner: Ash, Amount: 220")
        .payment("Date: 2025-09-20, Owner: Birch, Amount: 220")
        .payment("Date: 2025-12-01, Owner: Ash, Amount: 220")
        .payment("Date: 2025-12-02, Owner: Ash, Amount: 20, Kind: tip")
        .purchase("Date: 2025-07-10, Supplier: Depot, Item: keg, Quantity: 20, Net: 120, Tax: 12")
        .purchase("Date: 2025-08-11, Supplier: Pump, Category: Diesel, Net: 80, Tax: 8")
        .purchase("Date: 2025-09-12, Supplier: Cover, Category: Insurance, Net: 300, Tax: 30")
        .purchase("Date: 2025-09-13, Supplier: Inn, Category: Entertainment, Net: 100, Tax: 10")
        .purchase("Date: 2025-10-01, Supplier: Ledger, Category: Tax agent, Net: 200, Tax: 20")
        .purchase("Date: 2025-10-02, Supplier: Fund, Category: Staff super, Gross: 90")
        .trip(
            "Date: 2025-07-05, From: Home, To: Oak, Distance: 3500, Purpose: rounds, Vehicle: Ute")
        .trip(
            "Date: 2026-06-05, From: Home, To: Oak, Distance: 2500, Purpose: rounds, Vehicle: Ute")
        .asset("Asset: Ute, Bought: 2024-02-01, Cost: 40000, Class: ute, Business use %: 80")
        .asset("Asset: Forge, Bought: 2025-09-01, Cost: 2400, Class: forge")
        .asset("Asset: Press, Bought: 2024-08-01, Cost: 30000, Class: press")
        .asset(
            "Asset: Grinder, Bought: 2024-03-01, Cost: 480, Class: grinder, Sold: 2026-02-01,"
                + " Proceeds: 150");
  }

  /**
   * By hand: 715 received with GST in the first quarter, a eleventh of it 65; 12 + 8 + 30 of GST on
   * purchases, none on entertaining, which is not deductible.
   */
  @ParameterizedTest
  @ValueSource(strings = {"cash", "invoiced"})
  void labels_of_the_activity_statement(String basis) {
    YearEndFindings findings = YEAR.quarter(basis, 1);
    assertEquals(Optional.of("715.00"), amount(findings, "G1"));
    assertEquals(Optional.of("65.00"), amount(findings, "1A"));
    assertEquals(Optional.of("50.00"), amount(findings, "1B"));
    List<String> first = table(findings, "activity-statement").rows().get(0);
    assertEquals("2025-10-28", first.get(3));
    assertEquals("715", first.get(7));
  }

  /** ato.gov.au: 28 February, 28 April and 28 July; a weekend moves to Monday. */
  @Test
  void statements_fall_due_by_quarter() {
    assertEquals(
        List.of("2025-10-28", "2026-03-02", "2026-04-28", "2026-07-28"),
        table(YEAR.of("cash"), "activity-statement").rows().stream()
            .map(row -> row.get(3))
            .distinct()
            .toList());
  }

  /** The tip of the second quarter is income and no sale. */
  @Test
  void a_tip_is_no_sale() {
    YearEndFindings findings = YEAR.quarter("cash", 2);
    assertEquals(Optional.of("220.00"), amount(findings, "G1"));
    assertEquals(Optional.of("220.00"), amount(findings, "other business income"));
  }

  /**
   * By hand: receipts 935 less 85 GST, tip 20, grinder 150: 1,020; 6,000 km of one car count 5,000
   * at 0.88; the forge of 2,400 is written off; the press's pool: 30,000 less 15 % in 2024-25, then
   * 30 % of 25,500.
   */
  @Test
  void the_cash_year_by_hand() {
    YearEndFindings findings = YEAR.of("cash");
    assertEquals(Optional.of("1020.00"), amount(findings, "other business income"));
    assertEquals(Optional.of("120.00"), amount(findings, "cost of sales"));
    assertEquals(Optional.of("4400.00"), amount(findings, "motor vehicle expenses"));
    assertEquals(Optional.of("10050.00"), amount(findings, "depreciation expenses"));
    assertEquals(Optional.of("500.00"), amount(findings, "all other expenses"));
    assertEquals(Optional.of("90.00"), amount(findings, "superannuation expenses"));
    assertEquals(Optional.of("15160.00"), amount(findings, "total expenses"));
    assertEquals(Optional.of("-14140.00"), amount(findings, "net income or loss from business"));
    assertEquals(Optional.of("100.00"), amount(findings, "not counted: not allowed"));
  }

  @Test
  void what_was_written_off_brings_its_proceeds_as_gain() {
    List<String> columns = table(YEAR.of("cash"), "assets").columns();
    Map<String, String> gains = new TreeMap<>();
    table(YEAR.of("cash"), "assets")
        .rows()
        .forEach(row -> gains.put(row.get(1), row.get(columns.indexOf("gain"))));
    assertEquals(Map.of("Ute", "", "Forge", "", "Press", "", "Grinder", "150.00"), gains);
  }

  @Test
  void invoiced_income_and_stock_stand_by_their_names() {
    StockValue stock = new StockValue(new BigDecimal("40"), new BigDecimal("25"), true);
    YearEndFindings findings = YEAR.with(stock, "invoiced");
    assertEquals(Optional.of("1020.00"), amount(findings, "other business income"));
    assertEquals(Optional.of("40.00"), amount(findings, "opening stock"));
    assertEquals(Optional.of("25.00"), amount(findings, "closing stock"));
    assertEquals(Optional.of("135.00"), amount(findings, "cost of sales"));
  }

  /** ITAA 1997 s.28-25; a vehicle for one tonne or more takes its actual cost. */
  @Test
  void a_truck_takes_no_cents_per_kilometre() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "au")
            .purchase("Date: 2025-08-11, Supplier: Pump, Category: Diesel, Gross: 88")
            .trip("Date: 2025-08-05, From: Home, To: Oak, Distance: 300, Vehicle: Truck")
            .trip(
                "Date: 2025-08-06, From: Home, To: Sea, Distance: 100, Purpose: private, Vehicle:"
                    + " Truck");
    YearEndFindings findings = end(book, List.of(), 2025);
    assertEquals(Optional.of("66.00"), amount(findings, "motor vehicle expenses"));
    assertTrue(says(findings, "300 business kilometres"));
  }

  /**
   * The rows of cost name no vehicle: beside the car's 264.00 none counts, and the page says so.
   */
  @Test
  void a_truck_beside_a_car_has_its_cost_left_to_the_preparer() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "au")
            .purchase("Date: 2025-08-11, Supplier: Pump, Category: Diesel, Gross: 88")
            .trip("Date: 2025-08-05, From: Home, To: Oak, Distance: 300, Vehicle: Wagon")
            .trip("Date: 2025-08-06, From: Home, To: Sea, Distance: 100, Vehicle: Truck");
    YearEndFindings findings = end(book, List.of(), 2025);
    assertEquals(Optional.of("264.00"), amount(findings, "motor vehicle expenses"));
    assertTrue(
        YearBook.notes(findings).stream()
            .anyMatch(note -> note.startsWith("100 business") && note.contains("none is counted")));
  }

  /** Each of two cars has a cap of its own. */
  @Test
  void the_cap_is_for_each_car() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "au")
            .trip("Date: 2025-08-05, From: Home, To: Oak, Distance: 6000, Vehicle: Wagon")
            .trip("Date: 2025-09-05, From: Home, To: Oak, Distance: 4000, Vehicle: Ute");
    YearEndFindings findings = end(book, List.of(), 2025);
    assertEquals(Optional.of("7920.00"), amount(findings, "motor vehicle expenses"));
    assertTrue(
        YearBook.notes(findings).stream().anyMatch(note -> note.startsWith("1000 business")));
  }

  /** 2026-27: no determination was found, and the limit of the write-off is open. */
  @Test
  void what_is_open_is_said() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "au")
            .asset("Asset: Forge, Bought: 2026-08-01, Cost: 2400, Class: forge")
            .trip("Date: 2026-08-05, From: Home, To: Oak, Distance: 100, Vehicle: Ute");
    YearEndFindings findings = end(book, List.of(), 2026);
    assertEquals(Optional.of("88.00"), amount(findings, "motor vehicle expenses"));
    assertEquals(Optional.of("360.00"), amount(findings, "depreciation expenses"));
    assertTrue(says(findings, "not found published"));
    assertTrue(says(findings, "not law in June 2026"));
  }

  @ParameterizedTest
  @CsvSource({"cash,0", "invoiced,0", "cash,1", "invoiced,1"})
  void every_line_opens_to_its_rows_and_the_journal_balances(String basis, int quarter) {
    YEAR.assertAddsUp(basis, quarter);
  }
}
