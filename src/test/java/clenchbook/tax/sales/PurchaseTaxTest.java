package clenchbook.tax.sales;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.WrittenRates;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tax within purchases, as it comes back and as value-added tax counts it; sums on paper. */
class PurchaseTaxTest {
  private static final CategoryMap CATEGORIES =
      new CategoryMap(
          WrittenRates.regime(),
          LocalDate.of(2026, 12, 31),
          WrittenRates.lookup(
              "x/categories, fuel, word, vehicle",
              "x/categories, home, word, private",
              "x/categories, fines, word, not allowed",
              "x/categories, vat, word, tax paid over"));

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .setting(Setting.TAX_NUMBER, "GB1")
        .purchase("Date: 2026-01-10, Supplier: Pump, Category: Fuel, Net: 50, Tax: 10");
  }

  private static List<String> written(List<LineItem> items) {
    return items.stream()
        .map(
            item ->
                String.join(
                    " ",
                    item.code(),
                    item.sheet(),
                    String.valueOf(item.row()),
                    item.date().toString(),
                    item.who(),
                    item.net().toPlainString(),
                    item.tax().toPlainString(),
                    item.gross().toPlainString()))
        .toList();
  }

  @Test
  void what_comes_back_is_the_tax_of_the_row_and_nothing_else_of_it() {
    assertEquals(
        List.of("input tax Purchases 2 2026-01-10 Pump 10.00 10.00 60.00"),
        written(InputTax.of(book().book(), CATEGORIES, false)));
  }

  @Test
  void private_forbidden_and_tax_itself_bring_nothing_back_and_neither_does_a_row_without_tax() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-01-11, Supplier: A, Category: Home, Net: 50, Tax: 10")
            .purchase("Date: 2026-01-12, Supplier: B, Category: Fines, Net: 50, Tax: 10")
            .purchase("Date: 2026-01-13, Supplier: C, Category: VAT, Net: 50, Tax: 10")
            .purchase("Date: 2026-01-14, Supplier: D, Category: Fuel, Gross: 50")
            .purchase("Date: 2026-01-15, Supplier: E, Category: Charms, Net: 5, Tax: 1");
    assertEquals(
        List.of("Pump", "E"),
        InputTax.of(book.book(), CATEGORIES, false).stream().map(LineItem::who).toList());
  }

  @Test
  void goods_bring_their_tax_back_whatever_their_category_says() {
    WrittenBook book =
        book()
            .purchase(
                "Date: 2026-01-11, Supplier: Depot, Item: keg, Category: Home, Net: 20, Tax: 4");
    assertEquals(
        List.of("Pump", "Depot"),
        InputTax.of(book.book(), CATEGORIES, false).stream().map(LineItem::who).toList());
  }

  @Test
  void the_day_paid_counts_where_payments_do_and_a_row_without_supplier_has_its_category() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .purchase("Date: 2026-01-10, Category: Fuel, Net: 1.005, Tax: 2, Paid on: 2026-02-03")
            .purchase("Date: 2026-01-11, Category: Fuel, Net: 5, Tax: 1");
    assertEquals(
        List.of(
            "input tax Purchases 2 2026-02-03 Fuel 2.00 2.00 3.01",
            "input tax Purchases 3 2026-01-11 Fuel 1.00 1.00 6.00"),
        written(InputTax.of(book.book(), CATEGORIES, true)));
    assertEquals(
        "2026-01-10", InputTax.of(book.book(), CATEGORIES, false).get(0).date().toString());
  }

  @Test
  void value_added_tax_counts_every_purchase_but_private_ones() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-01-11, Supplier: A, Category: Private, Net: 50, Tax: 10")
            .purchase("Date: 2026-01-12, Supplier: B, Category: Rent, Gross: 70");
    assertEquals(
        List.of(
            "purchases Purchases 2 2026-01-10 Pump 50.00 10.00 60.00",
            "purchases Purchases 4 2026-01-12 B 70.00 0.00 70.00"),
        written(VatPurchases.of(book.book())));
  }

  @Test
  void without_a_tax_number_no_tax_comes_back() {
    assertEquals(
        List.of("purchases Purchases 2 2026-01-10 Pump 50.00 0.00 60.00"),
        written(VatPurchases.of(book().setting(Setting.TAX_NUMBER, "").book())));
  }
}
