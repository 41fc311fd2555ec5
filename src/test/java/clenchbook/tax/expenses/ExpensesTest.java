package clenchbook.tax.expenses;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.page.Bases;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.tax.year.TaxBasis;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which purchases count as costs, on which line and in which year; added up on paper. */
class ExpensesTest {
  private static final Period YEAR =
      new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
  private static final TaxBasis CASH = new TaxBasis(true, true, Bases.CASH);
  private static final TaxBasis INVOICED = new TaxBasis(false, false, Bases.INVOICED);
  private static final RateLookup RATES =
      WrittenRates.lookup(
          "x/categories, insurance, word, insurance",
          "x/categories, diesel, word, vehicle",
          "x/categories, parking, word, parking and tolls",
          "x/categories, meal, word, meals",
          "x/categories, fine, word, not allowed",
          "x/categories, own, word, private",
          "x/categories, lathe, word, asset",
          "x/categories, vat, word, tax paid over",
          "x/lines, insurance, line, 15, Insurance",
          "x/lines, meals, line, 24b, Meals",
          "x/lines, bought, line, 36, Goods bought",
          "x/lines, used, line, 42, Goods used",
          "x/lines, vehicle, line, 9, Car and truck");

  private static Expenses expenses(
      WrittenBook book, TaxBasis basis, boolean recovered, Map<String, CostRule> rules) {
    CategoryMap categories = new CategoryMap(WrittenRates.regime(), YEAR.last(), RATES);
    return Expenses.of(book.book(), YEAR, basis, recovered, categories, rules);
  }

  private static Expenses expenses(WrittenBook book) {
    return expenses(book, CASH, false, Map.of());
  }

  /** Rows as {@code code row net tax gross who}. */
  private static List<String> written(List<LineItem> items) {
    return items.stream()
        .map(
            item ->
                String.join(
                    " ",
                    item.code(),
                    Integer.toString(item.row()),
                    item.net().toPlainString(),
                    item.tax().toPlainString(),
                    item.gross().toPlainString(),
                    item.who()))
        .toList();
  }

  private static WrittenBook book() {
    return new WrittenBook()
        .purchase(
            "Date: 2026-03-01, Category: Insurance, Net: 100, Tax: 20, Gross: 120, Supplier:"
                + " Mutual")
        .purchase("Date: 2026-03-02, Category: Diesel, Gross: 60")
        .purchase("Date: 2026-03-03, Category: Parking, Gross: 4")
        .purchase("Date: 2026-03-04, Category: Own, Gross: 9")
        .purchase("Date: 2026-03-05, Item: Keg, Quantity: 10, Net: 50, Gross: 60")
        .purchase("Date: 2026-03-06, Category: Whatnot, Gross: 7")
        .purchase("Date: 2026-03-07, Gross: 8");
  }

  @Test
  void each_row_goes_where_its_word_leads() {
    Expenses found = expenses(book());
    assertEquals(
        List.of(
            "insurance 2 120.00 0.00 120.00 Mutual",
            "parking and tolls 4 4.00 0.00 4.00 Parking",
            "goods bought 6 60.00 0.00 60.00 Keg",
            "unmapped 7 7.00 0.00 7.00 Whatnot",
            "unmapped 8 8.00 0.00 8.00 "),
        written(found.items()));
    assertEquals(List.of("vehicle 3 60.00 0.00 60.00 Diesel"), written(found.vehicleRows()));
    assertEquals(List.of("private 5 9.00 0.00 9.00 Own"), written(found.left()));
    assertEquals(7, found.withoutPaidOn());
  }

  @Test
  void tax_that_comes_back_is_no_cost() {
    Expenses found = expenses(book(), CASH, true, Map.of());
    assertEquals("insurance 2 100.00 20.00 120.00 Mutual", written(found.items()).get(0));
    assertEquals("goods bought 6 50.00 10.00 60.00 Keg", written(found.items()).get(2));
  }

  @ParameterizedTest
  @CsvSource({
    "true, 2025-12-31, 0",
    "true, 2026-01-01, 1",
    "true, 2027-01-01, 0",
    "true, '', 1",
    "false, 2025-12-31, 1",
    "false, 2027-01-01, 1"
  })
  void by_the_money_the_day_paid_counts_and_by_the_bill_the_day_bought(
      boolean cash, String paidOn, int rows) {
    WrittenBook book =
        new WrittenBook()
            .purchase("Date: 2026-06-01, Category: Insurance, Gross: 10, Paid on: " + paidOn);
    Expenses found = expenses(book, cash ? CASH : INVOICED, false, Map.of());
    assertEquals(rows, found.items().size());
    assertEquals(paidOn.isEmpty() ? rows : 0, found.withoutPaidOn());
  }

  @Test
  void each_word_is_listed_once_with_what_it_led_to() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-04-01, Category: Insurance, Gross: 30")
            .purchase("Date: 2026-04-02, Category: insurances, Gross: 40");
    assertEquals(
        List.of(
            "(none)  unmapped 1 8.00",
            "Diesel diesel vehicle 1 60.00",
            "Insurance insurance insurance 2 150.00",
            "Own own private 1 9.00",
            "Parking parking parking and tolls 1 4.00",
            "Whatnot  unmapped 1 7.00",
            "insurances insurance insurance 1 40.00"),
        expenses(book).mapping().stream()
            .map(
                each ->
                    each.word()
                        + " "
                        + each.by()
                        + " "
                        + each.code()
                        + " "
                        + each.rows()
                        + " "
                        + each.amount())
            .toList());
  }

  private static BigDecimal half(LineItem item) {
    return item.net().movePointLeft(1).multiply(BigDecimal.valueOf(5)).setScale(2);
  }

  private static WrittenBook meals() {
    return new WrittenBook()
        .purchase("Date: 2026-03-01, Category: Meal, Net: 50, Tax: 10, Gross: 60");
  }

  private static Expenses under(CostRule rule) {
    return expenses(meals(), CASH, true, Map.of("meals", rule));
  }

  @Test
  void a_countrys_rule_counts_a_part_and_lists_the_rest() {
    Expenses halves = under(new CostRule("meals", "meals, the rest", ExpensesTest::half));
    assertEquals(List.of("meals 2 25.00 10.00 60.00 Meal"), written(halves.items()));
    assertEquals(List.of("meals, the rest 2 25.00 10.00 60.00 Meal"), written(halves.left()));
  }

  @Test
  void a_rule_that_counts_all_of_it_leaves_nothing() {
    Expenses all = under(new CostRule("meals", "rest", LineItem::net));
    assertEquals(1, all.items().size());
    assertEquals(List.of(), all.left());
  }

  @Test
  void what_never_counts_is_listed_with_or_without_the_tax_on_it() {
    assertEquals(List.of(), under(CostRule.never("not allowed")).items());
    assertEquals(
        List.of("not allowed 2 50.00 10.00 60.00 Meal"),
        written(under(CostRule.never("not allowed")).left()));
    assertEquals(
        List.of("not allowed 2 60.00 0.00 60.00 Meal"),
        written(under(CostRule.neverWithTax("not allowed")).left()));
  }

  @Test
  void the_tax_is_lost_only_where_nothing_counts() {
    Expenses kept = under(new CostRule("meals", "rest", ExpensesTest::half, true));
    assertEquals(List.of("meals 2 25.00 10.00 60.00 Meal"), written(kept.items()));
    Expenses lost = under(new CostRule("meals", "rest", item -> BigDecimal.ZERO, true));
    assertEquals(List.of(), lost.items());
    assertEquals(List.of("rest 2 60.00 0.00 60.00 Meal"), written(lost.left()));
  }

  private static PurchaseJournal journal(TaxBasis basis) {
    return new PurchaseJournal(
        new LineScheme(WrittenRates.regime(), YEAR.last(), RATES), basis, WrittenRates.regime());
  }

  private static List<String> written(JournalEntry entry) {
    return entry.postings().stream()
        .map(posting -> posting.account() + " " + posting.amount().toPlainString())
        .collect(Collectors.toList());
  }

  @Test
  void each_row_is_one_entry_against_the_bank_or_the_suppliers() {
    Expenses found = expenses(book(), CASH, true, Map.of());
    List<LineItem> counted = new java.util.ArrayList<>(found.items());
    counted.addAll(found.vehicleRows());
    List<JournalEntry> entries = journal(CASH).costs(counted, found.left());
    assertEquals(
        List.of(
            List.of("Cost: Insurance 100.00", "Tax on purchases 20.00", "Bank and cash -120.00"),
            List.of("Owner's capital and drawings 60.00", "Bank and cash -60.00"),
            List.of("Cost: Car and truck 4.00", "Bank and cash -4.00"),
            List.of("Owner's capital and drawings 9.00", "Bank and cash -9.00"),
            List.of("Cost: Goods bought 50.00", "Tax on purchases 10.00", "Bank and cash -60.00"),
            List.of("Costs without a known category 7.00", "Bank and cash -7.00"),
            List.of("Costs without a known category 8.00", "Bank and cash -8.00")),
        entries.stream().map(ExpensesTest::written).toList());
    assertEquals(
        List.of("Cost: Goods used 50.00", "Tax on purchases 10.00", "Owed to suppliers -60.00"),
        written(journal(INVOICED).costs(counted, found.left()).get(4)));
  }

  @Test
  void what_does_not_count_stands_apart_and_an_asset_in_no_cost_at_all() {
    WrittenBook book =
        new WrittenBook()
            .purchase("Date: 2026-03-01, Category: Fine, Gross: 30")
            .purchase("Date: 2026-03-02, Category: VAT, Gross: 40")
            .purchase("Date: 2026-03-03, Category: Lathe, Gross: 500");
    Expenses found = expenses(book);
    assertEquals(
        List.of(
            List.of("Costs that do not count for tax 30.00", "Bank and cash -30.00"),
            List.of("Tax on sales 40.00", "Bank and cash -40.00")),
        journal(CASH).costs(found.items(), found.left()).stream()
            .map(ExpensesTest::written)
            .toList());
  }

  @Test
  void two_parts_of_a_row_are_one_entry() {
    Expenses halves = under(new CostRule("meals", "not allowed", ExpensesTest::half));
    assertEquals(
        List.of(
            List.of(
                "Cost: Meals 25.00",
                "Costs that do not count for tax 25.00",
                "Tax on purchases 10.00",
                "Bank and cash -60.00")),
        journal(CASH).costs(halves.items(), halves.left()).stream()
            .map(ExpensesTest::written)
            .toList());
  }

  /** On the invoiced basis the money that left the bank within the year, whatever was bought. */
  @Test
  void payments_stand_apart_on_the_invoiced_basis_alone() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .purchase(
                "Date: 2025-12-01, Category: Fine, Supplier: A, Gross: 30, Paid on:"
                    + " 2026-01-02")
            .purchase(
                "Date: 2026-12-01, Category: Fine, Supplier: B, Gross: 40, Paid on:"
                    + " 2027-01-02")
            .purchase("Date: 2026-12-02, Category: Fine, Supplier: C, Gross: 50")
            .purchase("Date: 2026-12-03, Category: Fine, Supplier: D, Gross: 0");
    assertEquals(List.of(), journal(CASH).payments(book.book(), YEAR));
    List<JournalEntry> paid = journal(INVOICED).payments(book.book(), YEAR);
    assertEquals(
        List.of("2026-01-02 paid, A", "2026-12-02 paid, C"),
        paid.stream().map(entry -> entry.date() + " " + entry.description()).toList());
    assertEquals(List.of("Owed to suppliers 30.00", "Bank and cash -30.00"), written(paid.get(0)));
  }
}
