package clenchbook.tax.sales;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEndFindings;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sales and their tax by rate, beside the summary of the plain regime; sums on paper. */
class SalesTaxLinesTest {

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "plain")
        .setting(Setting.TAX_BASIS, "invoiced")
        .setting(Setting.TAX_NUMBER, "1")
        .setting(Setting.CURRENCY, "GBP")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .tax("Code: R, Name: VAT, Rate %: 5.50")
        .work("Work: Set, Tax: S, Price: 100")
        .work("Work: Trim, Tax: R, Price: 200")
        .work("Work: Chat, Price: 30")
        .visit("Date: 2025-12-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .visit("Date: 2026-01-10, Horse: Bess, Owner: Ash, Work: Set, Charge: list")
        .visit("Date: 2026-01-11, Horse: Duke, Owner: Ash, Work: Trim, Charge: list")
        .visit("Date: 2026-01-12, Horse: Duke, Owner: Ash, Work: Chat, Charge: list");
  }

  private static List<String> beside(WrittenBook book, int year, String... months) {
    YearEndFindings findings = YearBook.end(book, YearBook.run(book, List.of(months)), year);
    return YearBook.table(findings, "tax-summary").rows().stream()
        .filter(row -> row.get(1).contains(" at ") || row.get(1).startsWith("tax on"))
        .map(row -> row.get(1) + ": " + row.get(3))
        .toList();
  }

  @Test
  void each_code_and_rate_has_its_sales_and_its_tax_and_purchases_theirs() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-02-01, Supplier: Pump, Category: Fuel, Net: 50, Tax: 10")
            .purchase("Date: 2026-02-02, Supplier: Pump, Category: Fuel, Gross: 7")
            .purchase("Date: 2025-02-02, Supplier: Pump, Category: Fuel, Net: 5, Tax: 1");
    assertEquals(
        List.of(
            "sales at R 5.5 %: 200.00",
            "tax at R 5.5 %: 11.00",
            "sales at S 20 %: 100.00",
            "tax at S 20 %: 20.00",
            "tax on purchases: 10.00"),
        beside(book, 2026, "2025-12", "2026-01").stream().toList());
  }

  @Test
  void a_visit_that_waits_for_its_invoice_is_no_sale_yet() {
    WrittenBook book =
        book().visit("Date: 2026-01-20, Horse: Moss, Owner: Birch, Work: Set, Charge: 500");
    YearEndFindings findings =
        YearBook.end(book, YearBook.run(book(), List.of("2025-12", "2026-01")), 2026);
    assertEquals(
        List.of("100.00"),
        YearBook.table(findings, "tax-summary").rows().stream()
            .filter(row -> row.get(1).equals("sales at S 20 %"))
            .map(row -> row.get(3))
            .toList());
  }

  @Test
  void without_purchases_that_bear_tax_there_is_no_line_of_it() {
    assertEquals(
        List.of("sales at S 20 %: 100.00", "tax at S 20 %: 20.00"),
        beside(book(), 2025, "2025-12", "2026-01"));
  }
}
