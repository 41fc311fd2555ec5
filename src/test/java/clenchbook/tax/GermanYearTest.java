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
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A German year by hand, 2025, and a small business beside it. */
class GermanYearTest {
  static final CountryYear YEAR =
      new CountryYear(
          "de",
          2025,
          List.of("2025-01", "2025-02", "2025-03", "2025-10", "2025-11"),
          StockValue.NONE,
          GermanYearTest::book);

  private static WrittenBook german() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "de")
        .setting(Setting.CURRENCY, "EUR")
        .setting(Setting.TAX_NUMBER, "000/000/00000");
  }

  private static WrittenBook book(String basis) {
    return german()
        .setting(Setting.TAX_BASIS, basis)
        .work("Work: Set, Tax: U, Price: 100.50")
        .work("Work: Trim, Tax: R, Price: 50")
        .work("Work: Fee, Tax: X, Price: 30")
        .tax("Code: U, Name: USt, Rate %: 19, Kind: standard")
        .tax("Code: R, Name: USt, Rate %: 7, Kind: reduced")
        .tax("Code: X, Name: frei, Rate %: 0, Kind: exempt")
        .visit("Date: 2025-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .visit("Date: 2025-02-10, Horse: Duke, Owner: Birch, Work: Trim, Charge: list")
        .visit("Date: 2025-03-10, Horse: Moss, Owner: Cedar, Work: Fee, Charge: list")
        .visit("Date: 2025-03-20, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .visit("Date: 2025-11-10, Horse: Duke, Owner: Birch, Work: Set, Charge: list")
        .payment("Date: 2025-02-01, Owner: Ash, Amount: 119.60")
        .payment("Date: 2025-03-01, Owner: Birch, Amount: 53.50")
        .payment("Date: 2025-04-02, Owner: Cedar, Amount: 30")
        .payment("Date: 2025-04-15, Owner: Ash, Amount: 119.60")
        .payment("Date: 2025-05-15, Owner: Ash, Amount: 20, Kind: tip")
        .payment("Date: 2026-01-15, Owner: Birch, Amount: 119.60")
        .purchase("Date: 2025-01-15, Supplier: Depot, Item: keg, Quantity: 9, Net: 100, Tax: 19")
        .purchase("Date: 2025-02-15, Supplier: Pump, Category: Diesel, Net: 90, Tax: 17.10")
        .purchase(
            "Date: 2025-03-28, Supplier: Cover, Category: Versicherung, Gross: 60, Paid on:"
                + " 2025-04-03")
        .purchase("Date: 2025-06-01, Supplier: Gasthof, Category: Bewirtung, Net: 106, Tax: 19")
        .purchase("Date: 2025-06-02, Supplier: Shop, Category: Geschenke, Net: 50, Tax: 9.50")
        .purchase("Date: 2025-06-03, Supplier: Shop, Category: Geschenke, Net: 50.01, Tax: 9.50")
        .purchase("Date: 2025-07-10, Supplier: Finanzamt, Category: Umsatzsteuer, Gross: 40")
        .purchase("Date: 2025-08-10, Supplier: Finanzamt, Category: USt-Erstattung, Gross: -5")
        .purchase("Date: 2025-08-11, Supplier: Stadt, Category: Gewerbesteuer, Gross: 70")
        .trip("Date: 2025-01-10, From: Home, To: Oak, Distance: 300, Purpose: rounds")
        .trip("Date: 2025-02-10, From: Home, To: Elm, Distance: 12, Purpose: rounds")
        .asset("Asset: Esse, Bought: 2025-10-03, Cost: 7200, Class: Esse")
        .asset("Asset: Bohrer, Bought: 2025-02-01, Cost: 800, Class: Werkzeug")
        .asset(
            "Asset: Presse, Bought: 2024-07-01, Cost: 2400, Class: 4 Jahre, Sold: 2025-07-20,"
                + " Proceeds: 1500")
        .asset("Asset: Regal, Bought: 2023-05-05, Cost: 900, Class: Sammelposten")
        .asset("Asset: Ding, Bought: 2025-05-05, Cost: 1900, Class: Dings");
  }

  /**
   * By hand: 2 × 100.50 and 50 net received with 38.20 and 3.50 of tax (119.60 = 100.50 × 1.19 as
   * billed), 30 exempt, a tip of 20; the November set is paid in 2026 and no income yet.
   */
  @ParameterizedTest
  @CsvSource({"cash", "invoiced"})
  void income_by_the_names_and_numbers_of_the_form(String basis) {
    YearEndFindings findings = YEAR.of(basis);
    assertEquals(Optional.of("271.00"), amount(findings, "15"));
    assertEquals(Optional.of("30.00"), amount(findings, "16"));
    assertEquals(Optional.of("41.70"), amount(findings, "17"));
    assertEquals(Optional.of("5.00"), amount(findings, "18"));
    assertEquals(Optional.of("1500.00"), amount(findings, "19"));
    assertEquals(Optional.of("1847.70"), amount(findings, "23"));
    assertTrue(
        table(findings, "tax-summary").rows().stream()
            .anyMatch(
                row ->
                    row.get(1).equals("15")
                        && row.get(2).startsWith("Umsatzsteuerpflichtige Betriebseinnahmen")));
  }

  /**
   * By hand: goods 100 net; 312 km at 0.30 (the diesel is in it); meals 70 % of 106; one gift of
   * 50; forge 7,200 over 72 months from October: 300; drill of 800 at once; press 2,400 over 48
   * months, six of 2024 and six to June: 300, left 1,800; a fifth of the pool's 900. Input tax 19 +
   * 17.10 + 19 + 9.50, none on the gift above the limit.
   */
  @Test
  void costs_by_the_names_and_numbers_of_the_form() {
    YearEndFindings findings = YEAR.of("cash");
    assertEquals(Optional.of("100.00"), amount(findings, "27"));
    assertEquals(Optional.of("600.00"), amount(findings, "33"));
    assertEquals(Optional.of("800.00"), amount(findings, "36"));
    assertEquals(Optional.of("180.00"), amount(findings, "37"));
    assertEquals(Optional.of("1800.00"), amount(findings, "38"));
    assertEquals(Optional.of("60.00"), amount(findings, "49"));
    assertEquals(Optional.of("64.60"), amount(findings, "57"));
    assertEquals(Optional.of("40.00"), amount(findings, "58"));
    assertEquals(Optional.of("50.00"), amount(findings, "62"));
    assertEquals(Optional.of("74.20"), amount(findings, "63"));
    assertEquals(Optional.of("93.60"), amount(findings, "71"));
    assertEquals(Optional.empty(), amount(findings, "70"));
    assertEquals(Optional.of("3862.40"), amount(findings, "75"));
    assertEquals(Optional.of("-2014.70"), amount(findings, "92"));
    assertEquals(Optional.of("59.51"), amount(findings, "not counted: gifts above the limit"));
    assertEquals(Optional.of("70.00"), amount(findings, "not counted: not allowed"));
    assertTrue(says(findings, "1 asset has no useful life"));
  }

  /** By receipts in the first quarter: one set and one trim; by invoice: two sets and the trim. */
  @ParameterizedTest
  @CsvSource({
    "cash,1,100.00,50.00,36.10,-13.60",
    "invoiced,1,201.00,50.00,36.10,5.59",
    "cash,2,100.00,0.00,28.50,-9.50",
    "cash,4,0.00,0.00,0.00,0.00",
    "invoiced,4,100.00,0.00,0.00,19.00"
  })
  void codes_of_the_advance_return(
      String basis, int quarter, String at19, String at7, String input, String payable) {
    YearEndFindings findings = YEAR.quarter(basis, quarter);
    assertEquals(Optional.of(at19), amount(findings, "81"));
    assertEquals(Optional.of(at7), amount(findings, "86"));
    assertEquals(Optional.of(input), amount(findings, "66"));
    assertEquals(Optional.of(payable), amount(findings, "83"));
  }

  /** UStG § 18 (from memory); 10 January 2026 is a Saturday. */
  @Test
  void advance_returns_fall_due_by_quarter() {
    assertEquals(
        List.of("2025-04-10", "2025-07-10", "2025-10-10", "2026-01-12"),
        table(YEAR.of("cash"), "advance-return").rows().stream()
            .map(row -> row.get(3))
            .distinct()
            .toList());
  }

  /** UStG § 19: nothing is taxed, purchases count in full; the limits stand in the gauge. */
  @Test
  void a_small_business_enters_what_it_received_and_paid() {
    WrittenBook book =
        german()
            .tax("Code: K, Name: Kleinunternehmer, Rate %: 0, Kind: exempt, Reason: § 19 UStG")
            .work("Work: Set, Tax: K, Price: 120")
            .visit("Date: 2024-06-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 25001")
            .visit("Date: 2025-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
            .payment("Date: 2024-07-01, Owner: Ash, Amount: 25001")
            .payment("Date: 2025-02-01, Owner: Ash, Amount: 120")
            .purchase("Date: 2025-01-15, Supplier: Depot, Item: keg, Net: 100, Tax: 19")
            .asset("Asset: Bohrer, Bought: 2025-02-01, Cost: 952, Class: Werkzeug")
            .asset("Asset: Säge, Bought: 2025-02-01, Cost: 952.02, Class: Werkzeug");
    YearEndFindings findings = end(book, List.of(), 2025);
    assertEquals(Optional.of("120.00"), amount(findings, "12"));
    assertEquals(Optional.empty(), amount(findings, "17"));
    assertEquals(Optional.of("119.00"), amount(findings, "27"));
    assertEquals(Optional.of("952.00"), amount(findings, "36"));
    assertEquals(Optional.empty(), amount(findings, "57"));
    assertEquals(Optional.of("120.00"), amount(findings, "Q1 Kz 48"));
    assertTrue(says(findings, "small business (§ 19 UStG)"));
    List<List<String>> gauges = table(findings, "turnover-gauge").rows();
    assertEquals("25001.00", gauges.get(0).get(5));
    assertEquals("2025-01", gauges.get(0).get(8));
  }

  /** From the sale that passes 100,000 on tax is due; what came before stays a small business's. */
  @Test
  void a_small_business_may_end_within_the_year() {
    WrittenBook book =
        german()
            .work("Work: Set, Tax: U, Price: 100")
            .tax("Code: U, Name: frei, Rate %: 0, Kind: exempt")
            .tax("Code: U, Name: USt, Rate %: 19, Kind: standard, From: 2025-06-01")
            .visit("Date: 2025-05-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 100001")
            .visit("Date: 2025-06-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 100")
            .payment("Date: 2025-07-01, Owner: Ash, Amount: 100120");
    YearEndFindings findings = end(book, List.of(), 2025);
    assertEquals(Optional.of("100001.00"), amount(findings, "12"));
    assertEquals(Optional.of("100.00"), amount(findings, "15"));
    assertEquals(Optional.of("19.00"), amount(findings, "17"));
  }

  /** The form of 2026 was not looked at: names, no numbers. */
  @Test
  void a_year_without_a_table_of_numbers_gives_names() {
    WrittenBook book =
        german()
            .work("Work: Set, Tax: U, Price: 100")
            .tax("Code: U, Name: USt, Rate %: 19, Kind: standard")
            .visit("Date: 2026-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
            .payment("Date: 2026-02-01, Owner: Ash, Amount: 119");
    YearEndFindings findings = end(book, List.of(), 2026);
    assertEquals(Optional.of("100.00"), amount(findings, "steuerpflichtige Einnahmen"));
    assertTrue(says(findings, "are not given for 2026"));
    assertTrue(YearBook.errors(findings).isEmpty(), YearBook.errors(findings).toString());
  }

  /** A vehicle used more than half for business: actual cost and depreciation, no kilometres. */
  @Test
  void a_vehicle_of_the_business_takes_its_actual_cost() {
    WrittenBook book =
        german()
            .purchase("Date: 2025-02-15, Supplier: Pump, Category: Diesel, Gross: 100")
            .purchase("Date: 2025-02-16, Supplier: City, Category: Parken, Gross: 4")
            .trip("Date: 2025-01-10, From: Home, To: Oak, Distance: 300")
            .trip("Date: 2025-01-11, From: Home, To: Sea, Distance: 100, Purpose: private")
            .asset("Asset: Transporter, Bought: 2025-01-15, Cost: 10800, Business use %: 75");
    YearEndFindings findings = end(book, List.of(), 2025);
    assertEquals(Optional.of("79.00"), amount(findings, "70"));
    assertEquals(Optional.empty(), amount(findings, "71"));
    assertEquals(Optional.of("900.00"), amount(findings, "33"));
  }

  @ParameterizedTest
  @CsvSource({"cash,0", "invoiced,0", "cash,1", "invoiced,1", "cash,2"})
  void every_line_opens_to_its_rows_and_the_journal_balances(String basis, int quarter) {
    YEAR.assertAddsUp(basis, quarter);
  }

  /** The statement's surplus is what the journal's income and cost accounts come to. */
  @Test
  void the_journal_tells_the_same_surplus() {
    YearEndFindings findings = YEAR.of("cash");
    BigDecimal surplus = BigDecimal.ZERO;
    for (List<String> row : table(findings, "journal").rows()) {
      if (row.get(1).startsWith("Income: ") || row.get(1).startsWith("Cost: ")) {
        BigDecimal debit = row.get(3).isEmpty() ? BigDecimal.ZERO : new BigDecimal(row.get(3));
        BigDecimal credit = row.get(4).isEmpty() ? BigDecimal.ZERO : new BigDecimal(row.get(4));
        surplus = surplus.add(credit).subtract(debit);
      }
    }
    assertEquals(amount(findings, "92"), Optional.of(surplus.toPlainString()));
  }
}
