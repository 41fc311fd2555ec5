package clenchbook.stock.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.stock.ledger.StockMovements;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is ordered of one shelf, in which packs, at what cost; worked out on paper. */
class StockLinesTest {
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private static StockLine line(WrittenBook book) {
    Jobs jobs = book.jobs();
    return StockLines.of(jobs, StockMovements.upTo(jobs, OCTOBER.atEndOfMonth()), OCTOBER, 42)
        .get(0);
  }

  private static WrittenBook book() {
    return new WrittenBook().setting(Setting.INPUT_TAX_RECOVERED, "yes");
  }

  /** 20 x 8 mm steel is 1.256 kg a metre (7850 kg a cubic metre, EN 10219-2). */
  @ParameterizedTest
  @CsvSource({
    "'Kind: nail, Per pack: 250', 250, piece",
    "'Kind: nail, Per pack: 0', 1, piece",
    "'Kind: nail', 1, piece",
    "'Kind: keg', 2, piece",
    "'Kind: aluminium', 2, piece",
    "'Kind: pad, Unit: pair', 2, piece",
    "'Kind: pad', 1, piece",
    "'Kind: bar, Unit: bar, Bar length mm: 3000, Section: 20 x 8 mm', 1, bar",
    "'Kind: bar, Unit: kg, Bar length mm: 3000, Section: 20 x 8 mm', 3.768, kg",
    "'Kind: bar, Unit: kg', 1, kg",
    "'Kind: gas, Unit: kg', 1, kg",
    "'Kind: adhesive, Unit: kg', 1, piece"
  })
  void what_is_sold_together_is_ordered_together(String row, BigDecimal pack, String unit) {
    StockLine line = line(book().material("Item: Thing, " + row));
    assertEquals(0, pack.compareTo(line.pack()), line.pack()::toPlainString);
    assertEquals(unit, line.unit());
  }

  @ParameterizedTest
  @CsvSource({"'Kind: handmade', true", "'Kind: keg, Bar: Flat', true", "'Kind: keg', false"})
  void what_the_farrier_makes_is_never_ordered(String row, boolean made) {
    StockLine line =
        line(
            book()
                .setting(Setting.HOURLY_WAGE, "24")
                .material("Item: Thing, Reorder at: 50, Unit cost: 4, " + row)
                .count("Date: 2026-10-01, Item: Thing, Quantity: 3")
                .visit("Date: 2026-10-05, Horse: A, Owner: R, Work: Set, Shoe: Thing, Shoes: 2"));
    assertEquals(made, line.made());
    assertEquals(made, line.order().signum() == 0);
  }

  @Test
  void what_the_book_never_saw_in_stock_is_not_ordered() {
    StockLine line = line(book().material("Item: Thing, Kind: pad, Reorder at: 50, Unit cost: 4"));
    assertEquals(0, line.order().signum());
    assertEquals(new BigDecimal("0.00"), line.orderCost());
    assertEquals(Basis.STANDARD, line.reorderBasis());
  }

  /** 50 wanted and 3 there: 47, or 5 packs of 10. */
  @ParameterizedTest
  @CsvSource({
    "'Unit cost: 4', 47, 47, 188.00",
    "'Per pack: 10, Unit cost: 4', 50, 5, 200.00",
    "'Per pack: 10, Pack cost: 35, Unit cost: 4', 50, 5, 175.00",
    "'Per pack: 10, Pack cost: 35', 50, 5, 175.00",
    "'Pack cost: 35, Unit cost: 4', 47, 47, 188.00"
  })
  void an_order_costs_its_packs_or_its_pieces(
      String row, BigDecimal order, BigDecimal packs, BigDecimal cost) {
    StockLine line =
        line(
            book()
                .material("Item: Thing, Kind: pad, Reorder at: 50, " + row)
                .count("Date: 2026-10-01, Item: Thing, Quantity: 3"));
    assertEquals(0, order.compareTo(line.order()));
    assertEquals(packs, line.packs());
    assertEquals(cost, line.orderCost());
  }

  /** 4 bought for 14.00: 3.50 each where the list says nothing. */
  @ParameterizedTest
  @CsvSource({"'Kind: pad', 3.5", "'Kind: pad, Unit cost: 4', 4"})
  void a_piece_costs_its_list_price_else_its_average(String row, BigDecimal cost) {
    StockLine line =
        line(
            book()
                .material("Item: Thing, " + row)
                .purchase("Date: 2026-10-01, Item: Thing, Quantity: 4, Net: 14"));
    assertEquals(0, cost.compareTo(line.unitCost()));
  }

  @Test
  void an_empty_shelf_without_a_price_costs_nothing() {
    assertEquals(BigDecimal.ZERO, line(book().material("Item: Thing, Kind: pad")).unitCost());
  }

  @ParameterizedTest
  @CsvSource({
    "'Kind: pad, Supplier: Smith', Smith",
    "'Kind: pad', Brown",
  })
  void the_supplier_is_the_lists_else_the_last_who_sold_it(String row, String supplier) {
    StockLine line =
        line(
            book()
                .material("Item: Thing, " + row)
                .purchase("Date: 2026-10-01, Item: Thing, Supplier: Jones, Quantity: 4, Net: 14")
                .purchase("Date: 2026-10-02, Item: Thing, Supplier: Brown, Quantity: 4, Net: 14")
                .purchase("Date: 2026-10-03, Item: Thing, Quantity: 4, Net: 14"));
    assertEquals(supplier, line.supplier());
  }

  /**
   * Four weeks back from 31 October begin on the 4th; the book's first visit on the 3rd leaves four
   * whole ones, one on the 5th three. Two pads of the 4th, three of the 31st.
   */
  @ParameterizedTest
  @CsvSource({"2026-10-03, 4, 1.25", "2026-10-04, 4, 1.25", "2026-10-05, 3, 1.00"})
  void weeks_are_counted_back_from_the_months_end_as_far_as_the_book_goes(
      String first, int weeks, BigDecimal mean) {
    String pads = "Horse: A, Owner: R, Work: Pads, Extras: Thing:";
    WrittenBook book =
        book()
            .material("Item: Thing, Kind: pad")
            .visit("Horse: A, Owner: R, Work: Trim, Date: " + first)
            .visit(pads + "3, Date: 2026-10-31");
    if (!first.endsWith("05")) {
      book.visit(pads + "2, Date: 2026-10-04");
    }
    WeeklyUse use = line(book).use();
    assertEquals(weeks, use.weeks());
    assertEquals(mean, use.mean().setScale(2, RoundingMode.HALF_UP));
  }

  @Test
  void no_more_than_twenty_six_weeks_are_looked_at() {
    String pads = "Horse: A, Owner: R, Work: Pads, Extras: Thing:";
    WrittenBook book =
        book()
            .material("Item: Thing, Kind: pad")
            .visit(pads + "100, Date: 2026-05-02")
            .visit(pads + "26, Date: 2026-05-03");
    WeeklyUse use = line(book).use();
    // 26 weeks back from 31 October begin on 3 May.
    assertEquals(26, use.weeks());
    assertEquals(0, BigDecimal.ONE.compareTo(use.mean()));
  }

  /** One week alone has no spread: the reorder point is the use over the lead time, rounded up. */
  @ParameterizedTest
  @CsvSource({"Kind: pad, 7, 3", "Kind: pad, 10, 5", "'Kind: gas, Unit: kg', 10, 4.3"})
  void the_reorder_point_is_rounded_up_as_the_thing_is_counted(
      String row, String lead, BigDecimal reorder) {
    WrittenBook book =
        book()
            .setting(Setting.LEAD_DAYS, lead)
            .material("Item: Thing, " + row)
            .visit("Horse: A, Owner: R, Work: Pads, Extras: Thing:3, Date: 2026-10-25");
    StockLine line = line(book);
    assertEquals(Optional.of(reorder), line.reorder());
    assertEquals(Basis.MEASURED, line.reorderBasis());
    assertEquals(Optional.empty(), line.use().spread());
    // Three a week over 42 days.
    assertEquals(0, new BigDecimal("18").compareTo(line.intervalUse()));
  }

  @ParameterizedTest
  @CsvSource({"'', false", "'purchase', true", "'count', true", "'visit', true", "'before', true"})
  void a_shelf_has_moved_when_anything_was_there_came_or_went(String what, boolean moved) {
    WrittenBook book = book().material("Item: Thing, Kind: pad, Unit cost: 4");
    switch (what) {
      case "purchase" -> book.purchase("Date: 2026-10-01, Item: Thing, Quantity: 4, Net: 14");
      case "count" -> book.count("Date: 2026-10-01, Item: Thing, Quantity: 0");
      case "visit" ->
          book.visit("Horse: A, Owner: R, Work: Pads, Extras: Thing:3, Date: 2026-10-25");
      case "before" -> book.purchase("Date: 2026-09-01, Item: Thing, Quantity: 4, Net: 14");
      default -> assertEquals("", what);
    }
    assertEquals(moved, line(book).moved());
  }
}
