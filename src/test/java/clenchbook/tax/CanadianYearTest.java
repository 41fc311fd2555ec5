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

/** A Canadian year by hand, 2026, of a farrier in Ontario who also works in Nova Scotia. */
class CanadianYearTest {
  static final CountryYear YEAR =
      new CountryYear(
          "ca",
          2026,
          List.of("2026-01", "2026-02", "2026-03"),
          new StockValue(new BigDecimal("40"), new BigDecimal("25"), true),
          CanadianYearTest::book);

  private static WrittenBook canadian() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "ca")
        .setting(Setting.CURRENCY, "CAD")
        .setting(Setting.POSTCODE, "K0A 1A0");
  }

  private static WrittenBook book(String basis) {
    return canadian()
        .setting(Setting.TAX_BASIS, basis)
        .setting(Setting.TAX_NUMBER, "000000000 RT0001")
        .work("Work: Set, Tax: H, Price: 200")
        .work("Work: Away, Tax: N, Price: 300")
        .tax("Code: H, Name: HST, Rate %: 13, Kind: standard")
        .tax("Code: N, Name: HST, Rate %: 14, Kind: standard")
        .place("Place: Oak Farm, Address: 12 Lane\nTruro NS")
        .visit("Date: 2026-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .visit(
            "Date: 2026-02-10, Horse: Duke, Owner: Birch, Work: Away, Charge: list, Place: Oak"
                + " Farm")
        .visit(
            "Date: 2026-03-10, Horse: Moss, Owner: Cedar, Work: Set, Charge: list, Place: Oak Farm")
        .payment("Date: 2026-02-01, Owner: Ash, Amount: 226")
        .payment("Date: 2026-03-01, Owner: Birch, Amount: 342")
        .purchase("Date: 2026-01-15, Supplier: Depot, Item: keg, Quantity: 9, Net: 100, Tax: 13")
        .purchase("Date: 2026-02-15, Supplier: Pump, Category: Truck fuel, Net: 80, Tax: 10.40")
        .purchase("Date: 2026-02-16, Supplier: City, Category: Parking, Net: 5, Tax: 0.65")
        .purchase("Date: 2026-03-28, Supplier: Cover, Category: Liability insurance, Gross: 300")
        .purchase(
            "Date: 2026-04-01, Supplier: Diner, Category: Client entertaining, Net: 60, Tax: 7.80")
        .purchase("Date: 2026-04-02, Supplier: Pat, Category: Helper, Gross: 150")
        .purchase("Date: 2026-04-03, Supplier: Gas Co, Category: Forge gas, Gross: 40")
        .trip("Date: 2026-01-10, From: Home, To: Oak, Distance: 60, Purpose: round")
        .trip("Date: 2026-01-11, From: Home, To: Sea, Distance: 40, Purpose: private")
        .asset("Asset: Truck, Bought: 2026-02-01, Cost: 40000, Class: truck, Business use %: 60")
        .asset("Asset: Anvil, Bought: 2023-05-01, Cost: 2000, Class: anvil")
        .asset("Asset: Tongs, Bought: 2026-05-01, Cost: 499, Class: tool");
  }

  /**
   * By hand, by invoices: 200 + 300 + 200; goods 40 + 100 − 25, helper 150; fuel 80 at 60 % and
   * parking 5; half of 60.
   */
  @Test
  void the_invoiced_year_by_its_four_digit_lines() {
    YearEndFindings findings = YEAR.of("invoiced");
    Map<String, String> expected = new TreeMap<>();
    expected.putAll(Map.of("8000", "700.00", "8299", "700.00", "8300", "40.00"));
    expected.putAll(Map.of("8320", "100.00", "8360", "150.00", "8500", "25.00"));
    expected.putAll(Map.of("8518", "265.00", "8519", "435.00", "8523", "30.00"));
    expected.putAll(Map.of("8690", "300.00", "9224", "40.00", "9281", "53.00"));
    expected.putAll(Map.of("9368", "423.00", "9369", "12.00"));
    expected.forEach((line, sum) -> assertEquals(Optional.of(sum), amount(findings, line), line));
  }

  /** Received without tax: 200 and 300; no stock; the note says what the form wants. */
  @Test
  void cash_counts_what_came_and_says_what_the_form_wants() {
    YearEndFindings findings = YEAR.of("cash");
    assertEquals(Optional.of("500.00"), amount(findings, "8000"));
    assertEquals(Optional.of("250.00"), amount(findings, "8518"));
    assertTrue(says(findings, "By invoices the sales come to 700.00"));
  }

  /** By hand: tax 26 + 42 + 26; credits 13 + 10.40 + 0.65 + 7.80. */
  @ParameterizedTest
  @CsvSource({
    "101,700.00",
    "103,94.00",
    "104,0.00",
    "105,94.00",
    "106,31.85",
    "107,0.00",
    "108,31.85",
    "109,62.15"
  })
  void lines_of_the_tax_return(String line, String sum) {
    assertEquals(Optional.of(sum), amount(YEAR.of("invoiced"), "GST/HST " + line));
  }

  /** Where the horse stood decides: the third visit should bear 14 % and bears 13. */
  @Test
  void the_province_of_the_work_decides_the_rate() {
    YearEndFindings findings = YEAR.of("invoiced");
    List<List<String>> rows = table(findings, "gst-by-province").rows();
    assertEquals(
        List.of("NS", "the place's address", "13", "14", "200.00", "26.00", "28.00", "yes"),
        rows.get(0));
    assertEquals(
        List.of("NS", "14", "no"),
        List.of(rows.get(1).get(0), rows.get(1).get(2), rows.get(1).get(7)));
    assertEquals("default: the business's own", rows.get(2).get(1));
    assertEquals("ON", rows.get(2).get(0));
    assertTrue(says(findings, "200.00 of sales bear another rate"));
  }

  /** By hand: truck 24,000 at 30 %; anvil 2,000 of 2023 at 20 %, 150 % in the first year. */
  @Test
  void classes_of_capital_cost_stand_beside_as_an_estimate() {
    YearEndFindings findings = YEAR.of("invoiced");
    Map<String, String> most = new TreeMap<>();
    table(findings, "cca").rows().forEach(row -> most.put(row.get(0), row.get(6)));
    assertEquals(Map.of("class 10", "7200.00", "class 12", "499.00", "class 8", "179.20"), most);
    assertEquals(Optional.of("7878.20"), amount(findings, "9936"));
  }

  @Test
  void without_a_tax_number_no_tax_is_reckoned_and_purchases_cost_all() {
    WrittenBook book =
        canadian()
            .setting(Setting.TAX_BASIS, "invoiced")
            .visit("Date: 2026-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: 30001")
            .purchase("Date: 2026-01-15, Supplier: Cover, Category: Insurance, Net: 100, Tax: 13");
    YearEndFindings findings = end(book, List.of(), 2026);
    assertEquals(Optional.of("113.00"), amount(findings, "8690"));
    assertEquals(Optional.empty(), amount(findings, "GST/HST 103"));
    List<List<String>> gauges = table(findings, "turnover-gauge").rows();
    assertEquals(List.of("2026-01", "2026-01"), gauges.stream().map(row -> row.get(8)).toList());
  }

  /** canada.ca, Keeping motor vehicle records: destination, purpose, odometer at both ends. */
  @Test
  void what_the_log_lacks_is_said() {
    WrittenBook book =
        canadian()
            .trip("Date: 2026-01-10, From: Home, Distance: 60")
            .trip("Date: 2026-01-11, From: Home, To: Sea, Distance: 40, Purpose: round");
    YearEndFindings findings = end(book, List.of(), 2026);
    assertTrue(says(findings, "Of 2 business trips 1 lack a purpose and 1 a destination"));
    assertTrue(says(findings, "lacks an odometer reading"));
  }

  @ParameterizedTest
  @CsvSource({"cash,0", "invoiced,0", "cash,1", "invoiced,1"})
  void every_line_opens_to_its_rows_and_the_journal_balances(String basis, int quarter) {
    YEAR.assertAddsUp(basis, quarter);
  }
}
