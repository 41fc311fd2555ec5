package clenchbook.tax;

import static clenchbook.tax.YearBook.amount;
import static clenchbook.tax.YearBook.end;
import static clenchbook.tax.YearBook.run;
import static clenchbook.tax.YearBook.table;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.year.StockValue;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A year by hand: three months invoiced, one charge corrected afterwards, money of every kind. */
class ScriptedYearTest {

  /** The book; January's second charge is 120 when first invoiced and 100 once corrected. */
  static WrittenBook book(String regime, String basis, String secondCharge) {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, regime)
        .setting(Setting.TAX_BASIS, basis)
        .setting(Setting.TAX_NUMBER, regime.equals("uk") ? "GB123456789" : "")
        .setting(Setting.DISTANCE_UNIT, "mile")
        .work("Work: Set, Tax: S, Price: 100")
        .work("Work: Trim, Price: 40")
        .tax("Code: S, Name: Standard, Rate %: 20, Kind: standard")
        .visit("Date: 2025-12-20, Horse: Bess, Owner: Ash, Work: Set, Charge: 90")
        .visit(
            "Date: 2026-01-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 100, Paid: 60, Place:"
                + " Oak")
        .visit("Date: 2026-01-06, Horse: Duke, Owner: Birch, Work: Set, Charge: " + secondCharge)
        .visit("Date: 2026-02-10, Horse: Duke, Owner: Birch, Work: Trim, Charge: 40")
        .visit("Date: 2026-03-03, Horse: Bess, Owner: Ash, Work: Set, Charge: 0")
        .visit("Date: 2026-03-04, Horse: Moss, Owner: Cedar, Work: Trim, Charge: 50")
        .horse("Horse: Bess, Owner: Ash, Place: Oak")
        .place("Place: Oak, Distance: 7")
        .payment("Date: 2025-12-28, Owner: Ash, Amount: 108")
        .payment("Date: 2026-01-20, Owner: Ash, Amount: 60")
        .payment("Date: 2026-02-20, Owner: Birch, Amount: 200")
        .payment("Date: 2026-03-10, Owner: Birch, Amount: 40, Kind: refund")
        .payment("Date: 2026-03-11, Owner: Cedar, Amount: 30, Kind: deposit")
        .payment("Date: 2026-03-12, Owner: Cedar, Amount: 20, Kind: written off")
        .payment("Date: 2026-03-13, Owner: Cedar, Amount: 5, Kind: tip")
        .purchase(
            "Date: 2026-01-10, Supplier: Forge Supply, Item: keg, Quantity: 10, Net: 50, Tax: 10")
        .purchase("Date: 2026-02-01, Supplier: Ink Shop, Category: Stationery, Net: 12, Tax: 2.40")
        .purchase("Date: 2026-02-02, Supplier: Diner, Category: Meals, Gross: 21.01")
        .purchase("Date: 2026-02-03, Supplier: Pump, Category: Vehicle fuel, Net: 60, Tax: 12")
        .purchase("Date: 2026-02-04, Supplier: Shop, Category: Private, Gross: 15")
        .purchase("Date: 2026-02-05, Supplier: Fair, Category: Lucky charms, Gross: 9")
        .purchase("Date: 2026-02-06, Supplier: Lot, Category: Parking, Gross: 4")
        .purchase(
            "Date: 2025-12-30, Supplier: Late Bill, Category: Insurance, Gross: 300, Paid on:"
                + " 2026-01-02")
        .asset("Asset: Anvil, Bought: 2026-02-15, Cost: 1000, Class: anvil")
        .trip(
            "Date: 2026-01-05, From: Home, To: Oak, Distance: 14, Purpose: rounds, Vehicle: truck")
        .trip(
            "Date: 2026-01-07, From: Home, To: Sea, Distance: 6, Purpose: private, Vehicle: truck");
  }

  static List<BilledDocument> register(String regime, String basis) {
    WrittenBook before = book(regime, basis, "120");
    WrittenBook after = book(regime, basis, "100");
    List<BilledDocument> january = run(before, List.of(), "2026-01");
    return run(after, run(after, january, "2026-02"), "2026-03");
  }

  private static YearEndFindings findings(String regime, String basis) {
    return end(
        book(regime, basis, "100"), register(regime, basis), regime.equals("uk") ? 2025 : 2026);
  }

  @Test
  void the_register_holds_a_correction() {
    assertTrue(register("us", "cash").stream().anyMatch(document -> !document.invoice()));
  }

  @ParameterizedTest
  @CsvSource({"us,cash", "us,invoiced", "uk,cash", "uk,invoiced", "plain,cash", "plain,invoiced"})
  void the_journal_balances_in_each_row_group_and_in_all(String regime, String basis) {
    YearBook.assertJournalBalances(findings(regime, basis), 21);
  }

  @ParameterizedTest
  @CsvSource({"us,cash", "us,invoiced", "uk,cash", "uk,invoiced", "plain,cash", "plain,invoiced"})
  void every_line_opens_to_rows_that_add_to_it(String regime, String basis) {
    YearBook.assertEveryLineOpens(findings(regime, basis));
  }

  @ParameterizedTest
  @CsvSource({"us,cash", "us,invoiced", "uk,cash", "uk,invoiced", "plain,cash", "plain,invoiced"})
  void the_reconciliation_ends_in_nothing(String regime, String basis) {
    List<List<String>> results =
        table(findings(regime, basis), "reconciliation").rows().stream()
            .filter(row -> row.get(1).equals("left over"))
            .toList();
    assertEquals(3, results.size());
    results.forEach(row -> assertEquals("0.00", row.get(2), row.toString()));
  }

  /**
   * By hand. Money in: Ash 60 at the truck + 60, Birch 200, Cedar 30 = 350, tip 5; refund 40. Tax
   * within: Ash paid 120 for 100 + 20; Birch owes 160 in all (120 + 40) and paid it, 20 of it tax,
   * and had 40 too much back; Cedar's bill bears none. Gross receipts 60 + 60 + 200 + 30 + 5 = 355
   * less 20 + 20 tax = 315; returns 40.
   */
  @Test
  void cash_receipts_by_hand() {
    YearEndFindings findings = findings("us", "cash");
    assertEquals(Optional.of("315.00"), amount(findings, "1"));
    assertEquals(Optional.of("40.00"), amount(findings, "2"));
    assertEquals(Optional.of("275.00"), amount(findings, "3"));
    assertEquals(Optional.of("30.00"), amount(findings, "1 received on account"));
    assertEquals(Optional.of("5.00"), amount(findings, "1 tips"));
  }

  /**
   * By hand: goods 60 gross; office 14.40; meals half of 21.01; 14 miles at 0.725 and parking;
   * insurance when paid.
   */
  @Test
  void us_costs_on_the_cash_basis_by_hand() {
    YearEndFindings findings = findings("us", "cash");
    assertEquals(Optional.of("60.00"), amount(findings, "4"));
    assertEquals(Optional.of("14.40"), amount(findings, "18"));
    assertEquals(Optional.of("10.51"), amount(findings, "24b"));
    assertEquals(Optional.of("14.15"), amount(findings, "9"));
    assertEquals(Optional.of("300.00"), amount(findings, "15"));
    assertEquals(Optional.of("142.90"), amount(findings, "13"));
    assertEquals(Optional.of("9.00"), amount(findings, "unmapped"));
    assertEquals(Optional.of("490.96"), amount(findings, "28"));
    assertEquals(Optional.of("-275.96"), amount(findings, "31"));
    assertEquals(Optional.of("50.40"), amount(findings, "9 actual cost"));
    assertEquals(Optional.of("10.15"), amount(findings, "9 standard mileage"));
    assertEquals(Optional.of("15.00"), amount(findings, "not counted: private"));
    assertEquals(Optional.of("10.50"), amount(findings, "not counted: meals that do not count"));
  }

  /**
   * By hand: invoices of 2026 net 100 + 120 + 40 + 100 + 50, credit note 120 back, tip 5; December
   * stands in 2025.
   */
  @Test
  void invoiced_income_by_hand() {
    YearEndFindings findings = findings("us", "invoiced");
    assertEquals(Optional.of("295.00"), amount(findings, "1"));
    assertEquals(Optional.of("20.00"), amount(findings, "27b"));
    assertTrue(amount(findings, "15").isEmpty());
  }

  /**
   * By hand: the tax year from 6 April 2025 holds December too; VAT comes back, so costs are net.
   */
  @Test
  void uk_boxes_on_the_cash_basis_by_hand() {
    YearEndFindings findings = findings("uk", "cash");
    assertEquals(Optional.of("365.00"), amount(findings, "15"));
    assertEquals(Optional.of("50.00"), amount(findings, "17"));
    assertEquals(Optional.of("12.00"), amount(findings, "23"));
    assertEquals(Optional.of("1000.00"), amount(findings, "30"));
    assertEquals(Optional.of("31.31"), amount(findings, "20"));
    assertEquals(Optional.of("6.30"), amount(findings, "20 simplified mileage"));
    assertEquals(Optional.of("42.00"), amount(findings, "20 actual cost"));
  }

  @Test
  void what_was_driven_without_a_trip_stands_apart() {
    YearEndFindings findings = findings("us", "cash");
    assertEquals(
        List.of(List.of("2026-03-03", "Oak", "14")), table(findings, "reconstructed").rows());
    assertEquals(2, findings.mileageLog().rows().size());
  }

  @Test
  void an_unknown_category_is_named_and_kept() {
    assertTrue(
        YearBook.notes(findings("us", "cash")).stream()
            .anyMatch(note -> note.contains("'Lucky charms'")));
  }

  @Test
  void a_year_the_tables_lack_names_them_and_keeps_the_rows() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "us")
            .setting(Setting.DISTANCE_UNIT, "mile")
            .visit("Date: 2031-01-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 100")
            .payment("Date: 2031-01-06, Owner: Ash, Amount: 100")
            .trip("Date: 2031-01-05, From: Home, To: Oak, Distance: 14, Purpose: rounds");
    YearEndFindings findings = end(book, List.of(), 2031);
    assertTrue(
        YearBook.errors(findings).stream()
            .anyMatch(error -> error.contains("rates/us/mileage.csv")));
    assertTrue(
        YearBook.errors(findings).stream()
            .anyMatch(error -> error.contains("rates/us/self-employment.csv")));
    assertEquals(Optional.of("100.00"), amount(findings, "gross receipts"));
    assertTrue(amount(findings, "9").isEmpty());
  }

  @Test
  void without_a_payments_sheet_the_invoiced_income_stands_in_and_says_so() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, "us")
            .visit("Date: 2026-01-05, Horse: Bess, Owner: Ash, Work: Set, Charge: 100, Paid: 30");
    YearEndFindings findings = end(book, List.of(), 2026);
    List<String> line = table(findings, "tax-summary").rows().get(0);
    assertEquals("100.00", line.get(3));
    assertTrue(line.get(4).contains("no Payments sheet"));
    assertTrue(YearBook.notes(findings).get(0).contains("30"));
  }

  @Test
  void stock_at_both_ends_makes_the_goods_used_on_the_invoiced_basis() {
    StockValue stock = new StockValue(new BigDecimal("20"), new BigDecimal("35"), true);
    YearEndFindings findings =
        end(
            book("us", "invoiced", "100"),
            register("us", "invoiced"),
            2026,
            stock,
            Optional.empty());
    assertEquals(Optional.of("45.00"), amount(findings, "4"));
    assertEquals(Optional.of("80.00"), amount(findings, "40"));
  }

  @Test
  void a_quarter_holds_its_own_days_only() {
    YearEndFindings findings =
        end(
            book("us", "cash", "100"),
            register("us", "cash"),
            2026,
            StockValue.NONE,
            Optional.of(2));
    assertEquals(Optional.of("0.00"), amount(findings, "1"));
    assertTrue(amount(findings, "13").isEmpty());
  }
}
