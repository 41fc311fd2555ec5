package clenchbook.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a job's materials cost, worked out on paper by the moving average (IAS 2.27). */
class MaterialCostsTest {
  private static WrittenBook book() {
    return new WrittenBook()
        .material("Item: plain, Kind: keg, Size: 0, Unit cost: 4")
        .material("Item: E5, Kind: nail, Unit: pack, Unit cost: 25, Per pack: 250")
        .material("Item: pads, Kind: pad, Unit: pair, Unit cost: 9");
  }

  private static String row(String cells) {
    return "Horse: A, Owner: Ruth, Work: Set, Date: " + cells;
  }

  private static String cost(WrittenBook book) {
    return CostedBook.each(book, JobCost::materials);
  }

  private static String basis(WrittenBook book) {
    return CostedBook.each(book, JobCost::materialsBasis);
  }

  /** Four shoes at 4.00, 24 nails at 25.00 / 250, three pads at half of 9.00. */
  @Test
  void what_was_never_bought_costs_what_the_list_says() {
    WrittenBook book =
        book()
            .visit(
                row(
                    "2026-10-05, Shoe: plain, Size: 0, Shoes: 4, Nail: E5, Nails: 24,"
                        + " Extras: pads:3"));
    assertEquals("31.90", cost(book));
    assertEquals("STANDARD", basis(book));
  }

  @Test
  void shoes_put_on_again_cost_nothing_and_some_new_ones_cost_themselves() {
    WrittenBook book =
        book()
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4, New shoes: 0"))
            .visit(row("2026-10-06, Shoe: plain, Size: 0, Shoes: 4, New shoes: 1"));
    assertEquals("0.00 4.00", cost(book));
    assertEquals("MEASURED STANDARD", basis(book));
  }

  /** 10 for 50.00, of which 4 go; 6 left at 5.00 and 4 more for 30.00 make 10 for 60.00. */
  @Test
  void what_was_bought_costs_the_moving_average() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-01, Item: plain, Size: 0, Quantity: 10, Net: 50")
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4"))
            .purchase("Date: 2026-10-06, Item: plain, Size: 0, Quantity: 4, Net: 30")
            .visit(row("2026-10-06, Shoe: plain, Size: 0, Shoes: 4"))
            .purchase("Date: 2026-10-07, Item: plain, Size: 0, Quantity: 4, Net: 400")
            .visit(row("2026-10-06, Shoe: plain, Size: 0, Shoes: 1"));
    assertEquals("20.00 24.00 6.00", cost(book));
    assertEquals("MEASURED MEASURED MEASURED", basis(book));
  }

  @Test
  void a_count_sets_the_number_and_leaves_the_average() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-01, Item: plain, Size: 0, Quantity: 10, Net: 50")
            .count("Date: 2026-10-05, Item: plain, Size: 0, Quantity: 2")
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4"))
            .purchase("Date: 2026-10-06, Item: plain, Size: 0, Quantity: 2, Net: 20")
            .visit(row("2026-10-07, Shoe: plain, Size: 0, Shoes: 4"));
    // The visit comes before the count of its day. Two at 5.00 and two at 10.00 then cost 30.00.
    assertEquals("20.00 30.00", cost(book));
  }

  @ParameterizedTest
  @CsvSource({"yes, 20.00", "no, 24.00"})
  void input_tax_that_comes_back_is_no_cost(String recovered, String cost) {
    WrittenBook book =
        book()
            .setting(Setting.INPUT_TAX_RECOVERED, recovered)
            .purchase("Date: 2026-10-01, Item: plain, Size: 0, Quantity: 10, Net: 50, Gross: 60")
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4"));
    assertEquals(cost, cost(book));
  }

  @ParameterizedTest
  @CsvSource({
    "'Quantity: 2, Unit: pack, Net: 100', 20.00",
    "'Quantity: 500, Net: 100', 20.00",
    "'Unit: pack, Net: 50', 20.00"
  })
  void nails_bought_by_the_pack_are_counted_by_the_piece(String bought, String cost) {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-01, Item: E5, " + bought)
            .visit(row("2026-10-05, Nail: E5, Nails: 100, Shoes: 4"));
    assertEquals(cost, cost(book));
  }

  @Test
  void what_went_back_lowers_the_stock_and_not_its_cost() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-01, Item: plain, Size: 0, Quantity: 10, Net: 50")
            .purchase("Date: 2026-10-02, Item: plain, Size: 0, Quantity: -8, Net: -40")
            .purchase("Date: 2026-10-03, Item: plain, Size: 0, Quantity: 2, Net: 20")
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4"));
    assertEquals("30.00", cost(book));
  }

  @Test
  void nails_that_nobody_names_and_shoes_that_no_list_knows_cost_nothing_by_default() {
    WrittenBook book =
        new WrittenBook()
            .visit(row("2026-10-05, Nails: 24, Shoes: 4"))
            .visit(row("2026-10-06, Shoe: plain, Shoes: 4"))
            .visit(row("2026-10-07, Shoes: 0"));
    assertEquals("0.00 0.00 0.00", cost(book));
    assertEquals("DEFAULT DEFAULT MEASURED", basis(book));
  }

  @Test
  void what_no_list_knows_but_was_bought_is_not_the_lists() {
    WrittenBook book =
        new WrittenBook()
            .material("Item: plain, Kind: keg, Size: 0")
            .purchase("Date: 2026-10-01, Item: plain, Size: 0, Quantity: 10, Net: 50")
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4"))
            .visit(row("2026-10-06, Nail: E5, Nails: 4, Shoes: 0"));
    assertEquals("20.00 0.00", cost(book));
    assertEquals("MEASURED DEFAULT", basis(book));
  }

  @Test
  void a_cancelled_visit_uses_nothing() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-01, Item: plain, Size: 0, Quantity: 4, Net: 20")
            .visit(row("2026-10-04, Shoe: plain, Size: 0, Shoes: 4, Reason: cancelled"))
            .purchase("Date: 2026-10-05, Item: plain, Size: 0, Quantity: 4, Net: 40")
            .visit(row("2026-10-05, Shoe: plain, Size: 0, Shoes: 4"));
    assertEquals("0.00 30.00", cost(book));
  }

  /**
   * 300 mm of 20 x 8 mm steel weigh 0.3768 kg, in aluminium 0.1296 kg (mass by section, length and
   * 7850 or 2700 kg a cubic metre; EN 10219-2, nominal density of steel); with 3 mm for the cut
   * 0.380568 kg. At 5.00 a kilogram four shoes cost 7.61136.
   */
  @ParameterizedTest
  @CsvSource({
    "'Item: bar, Kind: bar, Unit: kg, Unit cost: 5, Section: 20 x 8 mm', 7.61",
    "'Item: aluminium bar, Kind: bar, Unit: kg, Unit cost: 5, Section: 20 x 8 mm', 2.62",
    "'Item: bar, Kind: bar, Unit: bar, Unit cost: 20, Bar length mm: 3030', 8.00"
  })
  void a_handmade_shoe_costs_its_length_of_bar(String bar, String cost) {
    String name = bar.substring(6, bar.indexOf(','));
    WrittenBook book =
        new WrittenBook()
            .material(bar)
            .material("Item: own, Kind: handmade, Length mm: 300, Cut mm: 3, Bar: " + name)
            .visit(row("2026-10-05, Shoe: own, Shoes: 4"));
    assertEquals(cost, cost(book));
    assertEquals("STANDARD", basis(book));
  }

  @Test
  void a_handmade_shoe_whose_bar_has_no_length_costs_its_own_list_price() {
    WrittenBook book =
        new WrittenBook()
            .material("Item: bar, Kind: bar, Unit: bar, Unit cost: 20")
            .material("Item: own, Kind: handmade, Length mm: 300, Bar: bar, Unit cost: 6")
            .material("Item: other, Kind: handmade, Length mm: 300, Bar: rod, Unit cost: 7")
            .visit(row("2026-10-05, Shoe: own, Shoes: 2"))
            .visit(row("2026-10-06, Shoe: other, Shoes: 2"));
    assertEquals("12.00 14.00", cost(book));
  }

  @Test
  void bars_bought_cost_their_average() {
    WrittenBook book =
        new WrittenBook()
            .material("Item: bar, Kind: bar, Unit: bar, Unit cost: 20, Bar length mm: 3000")
            .material("Item: own, Kind: handmade, Length mm: 300, Bar: bar")
            .purchase("Date: 2026-10-01, Item: bar, Quantity: 2, Unit: bar, Net: 60")
            .visit(row("2026-10-05, Shoe: own, Shoes: 4"));
    assertEquals("12.00", cost(book));
    assertEquals("MEASURED", basis(book));
  }
}
