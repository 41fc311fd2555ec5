package clenchbook.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.schedule.due.DueDates;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class StockMonthTest {

  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private final WrittenBook book =
      new WrittenBook()
          .material("Item: Keg front, Kind: keg, Size: 0, Unit cost: 4.00")
          .material("Item: Keg front, Kind: keg, Unit cost: 5.00")
          .material("Item: E5, Kind: nail, Unit: pack, Per pack: 250, Unit cost: 30.00")
          .material("Item: Pad, Kind: pad, Unit: pair, Unit cost: 9.00, Reorder at: 6");

  @Test
  void a_month_counts_what_came_and_what_went() {
    book.purchase("Date: 2026-09-10, Item: Keg front, Size: 0, Quantity: 40, Net: 160, Gross: 192")
        .purchase("Date: 2026-10-02, Item: E5, Quantity: 2, Unit: pack, Net: 60")
        .visit(set("2026-09-15", "0: 4"))
        .visit(set("2026-10-05", "0: 2; 00: 2"))
        .visit(set("2026-10-06", "0: 4") + ", New shoes: 0")
        .visit(set("2026-11-02", "0: 4"))
        .count("Date: 2026-10-31, Item: Keg front, Size: 0, Quantity: 33");
    assertEquals(List.of("Keg front", "0", "0", "2", "33", "34", "-1"), start("Keg front", "0"));
    assertEquals(List.of("Keg front", "", "0", "2", "", "0", ""), start("Keg front", ""));
    assertEquals(List.of("E5", "", "500", "64", "", "436", ""), start("E5", ""));
    assertEquals("36", figure("Keg front", "0", "opening"));
    assertEquals("33", figure("Keg front", "0", "closing"));
    // Without a tax number nothing comes back, so the 40 shoes cost their Gross: 4.80 each.
    assertEquals("-4.80", figure("Keg front", "0", "difference_value"));
    assertEquals("172.80", figure("Keg front", "0", "opening_value"));
    assertEquals("9.60", figure("Keg front", "0", "used_value"));
    assertEquals("158.40", figure("Keg front", "0", "closing_value"));
    assertEquals("2", figure("Keg front", "", "beyond_known_stock"));
  }

  @Test
  void with_input_tax_recovered_purchases_cost_their_net() {
    book.setting(Setting.INPUT_TAX_RECOVERED, "yes")
        .purchase("Date: 2026-10-02, Item: Keg front, Size: 0, Quantity: 40, Net: 160, Gross: 192");
    assertEquals("160.00", figure("Keg front", "0", "bought_value"));
  }

  @Test
  void expected_is_as_at_the_last_count_so_that_the_difference_is_what_was_missing() {
    book.purchase("Date: 2026-10-01, Item: Keg front, Size: 0, Quantity: 20, Net: 80")
        .visit(set("2026-10-05", "0: 4"))
        .count("Date: 2026-10-10, Item: Keg front, Size: 0, Quantity: 15")
        .visit(set("2026-10-20", "0: 4"));
    assertEquals(List.of("Keg front", "0", "20", "8", "15", "16", "-1"), start("Keg front", "0"));
    assertEquals("11", figure("Keg front", "0", "closing"));
  }

  @Test
  void within_a_day_purchases_come_first_then_visits_then_counts() {
    book.count("Date: 2026-10-05, Item: Keg front, Size: 0, Quantity: 16")
        .visit(set("2026-10-05", "0: 4"))
        .purchase("Date: 2026-10-05, Item: Keg front, Size: 0, Quantity: 20, Net: 80");
    assertEquals(List.of("Keg front", "0", "20", "4", "16", "16", "0"), start("Keg front", "0"));
    assertEquals("0", figure("Keg front", "0", "beyond_known_stock"));
  }

  @Test
  void sizes_that_share_a_shelf_are_counted_size_by_size_and_added() {
    book.purchase("Date: 2026-10-01, Item: Keg front, Size: 1, Quantity: 10, Net: 50")
        .purchase("Date: 2026-10-01, Item: Keg front, Size: 2, Quantity: 8, Net: 40")
        .count("Date: 2026-10-05, Item: Keg front, Size: 1, Quantity: 9")
        .count("Date: 2026-10-05, Item: Keg front, Size: 2, Quantity: 7")
        .count("Date: 2026-10-05, Item: Keg front, Size: 2, Quantity: 8");
    assertEquals(List.of("Keg front", "", "18", "0", "17", "18", "-1"), start("Keg front", ""));
  }

  @Test
  void the_first_count_of_unseen_stock_is_taken_on_not_found() {
    book.count("Date: 2026-10-05, Item: Keg front, Size: 0, Quantity: 10");
    assertEquals("40.00", figure("Keg front", "0", "taken_on_value"));
    assertEquals("0.00", figure("Keg front", "0", "difference_value"));
    assertEquals("0.00", figure("Keg front", "0", "used_value"));
    assertEquals("40.00", figure("Keg front", "0", "closing_value"));
  }

  @Test
  void a_handmade_shoe_is_listed_and_uses_up_its_bar() {
    book.material("Item: Flat bar, Kind: bar, Unit: bar, Bar length mm: 3000, Unit cost: 12")
        .material(
            "Item: Plain, Kind: handmade, Bar: Flat bar, Length mm: 296, Cut mm: 4, Making min: 15")
        .purchase("Date: 2026-10-01, Item: Flat bar, Quantity: 5, Net: 60")
        .visit("Date: 2026-10-05, Owner: Ann, Horse: Bess, Work: Set, Shoe: Plain, Shoes: 4");
    assertEquals(List.of("Plain", "", "0", "4", "", "0", ""), start("Plain", ""));
    assertEquals(List.of("Flat bar", "", "5", "0.4", "", "4.6", ""), start("Flat bar", ""));
    assertEquals("bar", figure("Flat bar", "", "unit"));
    assertEquals("4.80", figure("Flat bar", "", "used_value"));
    assertEquals("", figure("Plain", "", "reorder"));
  }

  @Test
  void a_bar_priced_by_mass_counts_in_kilograms() {
    book.material(
            "Item: Flat bar, Kind: bar, Unit: kg, Section: 20 x 8 mm, Bar length mm: 3000,"
                + " Unit cost: 2")
        .material("Item: Plain, Kind: handmade, Bar: Flat bar, Length mm: 300")
        .purchase("Date: 2026-10-01, Item: Flat bar, Quantity: 5, Unit: bar, Net: 40")
        .visit("Date: 2026-10-05, Owner: Ann, Horse: Bess, Work: Set, Shoe: Plain, Shoes: 4");
    // 20 x 8 mm is 1.256 kg/m (EN 10058 tables print 1.26, from memory): 15 m and 1.2 m.
    assertEquals(
        List.of("Flat bar", "", "18.84", "1.507", "", "17.333", ""), start("Flat bar", ""));
  }

  @Test
  void available_is_used_and_left_to_the_cent_on_every_line_and_in_all() {
    book.purchase("Date: 2026-09-30, Item: Keg front, Size: 0, Quantity: 7, Net: 31.11")
        .purchase("Date: 2026-10-12, Item: Keg front, Size: 0, Quantity: 11, Net: 50.03")
        .visit(set("2026-10-05", "0: 4"))
        .visit(set("2026-10-15", "0: 3"))
        .count("Date: 2026-10-20, Item: Keg front, Size: 0, Quantity: 10");
    for (FigureTable table : tables()) {
      if (table.name().equals("stock-value")) {
        for (List<String> row : table.rows()) {
          List<BigDecimal> worth = row.subList(1, 7).stream().map(BigDecimal::new).toList();
          BigDecimal available = worth.get(0).add(worth.get(1)).add(worth.get(2)).add(worth.get(3));
          assertEquals(0, available.compareTo(worth.get(4).add(worth.get(5))), row.toString());
          assertTrue(worth.get(4).signum() > 0);
        }
      }
    }
    assertEquals("31.11", figure("Keg front", "0", "opening_value"));
  }

  @Test
  void gas_bought_is_held_against_what_the_burn_explains() {
    book.setting(Setting.GAS_BURN_KG, "0.9")
        .material("Item: Propane, Kind: gas, Unit: kg, Unit cost: 3")
        .purchase("Date: 2026-10-02, Item: Propane, Quantity: 11, Unit: kg, Net: 33")
        .visit(set("2026-10-05", "0: 4") + ", Shaping: hot, Forge min: 25, Place: Hill")
        .visit(
            "Date: 2026-10-05, Owner: Ann, Horse: Dun, Work: Set, Shoe: Keg front, Shoes: 4,"
                + " Size: 0, Shaping: hot, Forge min: 30, Place: Hill");
    // 25 + 30 + 5 setting up = 60 min at 0.9 kg/h; 11 kg would need 11 kg/h.
    List<String> gas = table("gas").rows().get(0);
    assertEquals(
        List.of("2026-10", "kg", "11.00", "60", "0.90", "0.90", "10.10", "11.00", "measured", "0"),
        gas);
    assertEquals("0.9", figure("Propane", "", "used"));
  }

  @Test
  void gas_bought_as_an_expense_is_turned_into_kilograms_by_its_cost() {
    book.setting(Setting.GAS_COST_KG, "3")
        .purchase("Date: 2026-10-02, Category: Propane, Net: 33")
        .purchase("Date: 2026-10-03, Category: Gasoline, Net: 80");
    List<String> gas = table("gas").rows().get(0);
    assertEquals("11.00", gas.get(2));
    assertEquals("default", gas.get(8));
  }

  @Test
  void stock_at_its_reorder_point_is_ordered_in_whole_packs() {
    book.purchase("Date: 2026-10-01, Supplier: Smith, Item: Pad, Quantity: 5, Unit: pair, Net: 45")
        .visit(set("2026-09-01", "0: 4"))
        .visit(set("2026-10-12", "0: 4") + ", Extras: Pad: 4");
    // 10 bought, 4 used, 6 left: at the reorder point of 6. Half a pad a week over 41 days is 2.93.
    List<List<String>> order = table("order").rows();
    assertEquals(1, order.size());
    assertEquals(
        List.of("Smith", "Pad", "", "4", "piece", "2", "2", "18.00", "6", "6"),
        order.get(0).subList(0, 10));
  }

  @Test
  void what_the_book_never_saw_in_stock_is_not_ordered() {
    book.visit(set("2026-10-05", "0: 4"));
    assertTrue(table("order").rows().isEmpty());
  }

  private static String set(String day, String sizes) {
    return "Date: "
        + day
        + ", Owner: Ann, Horse: Bess, Work: Set, Shoe: Keg front, Shoes: 4, Nails: 32, Size: "
        + sizes;
  }

  private List<FigureTable> tables() {
    Jobs jobs = book.jobs();
    LocalDate end = OCTOBER.atEndOfMonth();
    return StockTables.of(StockMonth.of(jobs, DueDates.of(jobs, end), OCTOBER));
  }

  private FigureTable table(String name) {
    return tables().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  private List<String> row(String item, String size) {
    return table("stock").rows().stream()
        .filter(row -> row.get(0).equals(item) && row.get(1).equals(size))
        .findFirst()
        .orElseThrow();
  }

  private List<String> start(String item, String size) {
    return row(item, size).subList(0, 7);
  }

  private String figure(String item, String size, String column) {
    return row(item, size).get(table("stock").columns().indexOf(column));
  }
}
