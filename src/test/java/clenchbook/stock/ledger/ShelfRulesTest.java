package clenchbook.stock.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import clenchbook.book.Setting;
import clenchbook.jobs.StockKey;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which rows move a shelf, in what order and by how much; added up on paper. */
class ShelfRulesTest {
  private static final LocalDate END = LocalDate.of(2026, 10, 31);
  private static final StockKey KEG = new StockKey("Keg", "0");

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.INPUT_TAX_RECOVERED, "yes")
        .material("Item: Keg, Kind: keg, Size: 0, Unit cost: 4");
  }

  /** Every movement up to the end, as {@code 10-05 Used Keg 0 4}. */
  private static List<String> movements(WrittenBook book) {
    return StockMovements.upTo(book.jobs(), END).stream()
        .map(
            move ->
                move.date().toString().substring(5)
                    + " "
                    + move.getClass().getSimpleName()
                    + " "
                    + (move.shelf().item() + " " + move.shelf().size()).strip()
                    + " "
                    + Quantity.text(move.pieces()))
        .toList();
  }

  private static String visit(String day, String cells) {
    return "Horse: Bess, Owner: Ruth, Work: Set, Shoe: Keg, Size: 0, Date: " + day + ", " + cells;
  }

  @Test
  void within_a_day_purchases_then_visits_then_counts() {
    WrittenBook book =
        book()
            .count("Date: 2026-10-05, Item: Keg, Size: 0, Quantity: 3")
            .visit(visit("2026-10-05", "Shoes: 4"))
            .purchase("Date: 2026-10-05, Item: Keg, Size: 0, Quantity: 8, Net: 32");
    assertEquals(
        List.of("10-05 Bought Keg 0 8", "10-05 Used Keg 0 4", "10-05 CountedUp Keg 0 3"),
        movements(book));
  }

  @Test
  void what_lies_after_the_end_is_not_looked_at() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-11-01, Item: Keg, Size: 0, Quantity: 8, Net: 32")
            .visit(visit("2026-11-01", "Shoes: 4"))
            .count("Date: 2026-11-01, Item: Keg, Size: 0, Quantity: 3")
            .purchase("Date: 2026-10-31, Item: Keg, Size: 0, Quantity: 2, Net: 8");
    assertEquals(List.of("10-31 Bought Keg 0 2"), movements(book));
  }

  @Test
  void a_cancelled_visit_and_shoes_put_on_again_use_nothing() {
    WrittenBook book =
        book()
            .visit(visit("2026-10-05", "Shoes: 4, Reason: cancelled"))
            .visit(visit("2026-10-06", "Shoes: 4, New shoes: 0"));
    assertEquals(List.of(), movements(book));
  }

  @Test
  void an_expense_and_a_count_without_an_item_move_nothing() {
    WrittenBook book =
        book()
            .purchase("Date: 2026-10-05, Category: Insurance, Net: 32")
            .count("Date: 2026-10-05, Quantity: 3");
    assertEquals(List.of(), movements(book));
  }

  @ParameterizedTest
  @CsvSource({
    "'Quantity: -3, Net: -12', 10-05 Bought Keg 0 -3",
    "'Quantity: 3, Net: 0', 10-05 Bought Keg 0 3",
    "'Net: 4', 10-05 Bought Keg 0 1"
  })
  void what_goes_back_and_what_is_given_count_too(String cells, String movement) {
    WrittenBook book = book().purchase("Date: 2026-10-05, Item: Keg, Size: 0, " + cells);
    assertEquals(List.of(movement), movements(book));
  }

  @ParameterizedTest
  @CsvSource({"'Quantity: 0, Net: 12'", "'Quantity: 3, Net: -12'"})
  void no_pieces_or_a_cost_below_nothing_move_nothing(String cells) {
    WrittenBook book = book().purchase("Date: 2026-10-05, Item: Keg, Size: 0, " + cells);
    assertEquals(List.of(), movements(book));
  }

  /** A handmade shoe is listed at nothing, since its bar is what it costs. */
  @Test
  void a_handmade_shoe_takes_its_bar_and_is_worth_nothing_itself() {
    WrittenBook book =
        new WrittenBook()
            .material("Item: Flat, Kind: bar, Unit: bar, Bar length mm: 3000, Unit cost: 12")
            .material("Item: Own, Kind: handmade, Bar: Flat, Length mm: 300, Unit cost: 9")
            .material("Item: Other, Kind: handmade, Bar: Rod, Length mm: 300, Unit cost: 7")
            .visit("Date: 2026-10-05, Horse: A, Owner: R, Work: Set, Shoe: Own, Shoes: 4")
            .visit("Date: 2026-10-06, Horse: A, Owner: R, Work: Set, Shoe: Other, Shoes: 2");
    assertEquals(
        List.of("10-05 Used Own 4", "10-05 Used Flat 0.4", "10-06 Used Other 2"), movements(book));
    List<BigDecimal> costs =
        StockMovements.upTo(book.jobs(), END).stream()
            .map(move -> ((StockMovement.Used) move).listCost())
            .toList();
    assertEquals(List.of("0", "12", "7"), costs.stream().map(cost -> Quantity.text(cost)).toList());
  }

  @Test
  void the_forges_gas_is_used_only_where_gas_is_kept_as_stock() {
    String hot = "Shoes: 4, Shaping: hot, Forge min: 25";
    WrittenBook unkept =
        book()
            .material("Item: Propane, Kind: gas, Unit: kg, Unit cost: 3")
            .setting(Setting.GAS_BURN_KG, "0.9")
            .visit(visit("2026-10-05", hot));
    assertEquals(List.of("10-05 Used Keg 0 4"), movements(unkept));
    WrittenBook kept =
        unkept.purchase("Date: 2026-10-01, Item: Propane, Quantity: 11, Unit: kg, Net: 33");
    // 25 min and 5 of setting up at 0.9 kg an hour.
    assertEquals(
        List.of("10-01 Bought Propane 11", "10-05 Used Keg 0 4", "10-05 Used Propane 0.45"),
        movements(kept));
  }

  @Test
  void each_stop_with_a_hot_job_heats_the_forge_once() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.FORGE_SETUP_GAS_MIN, "10")
            .material("Item: Propane, Kind: gas, Unit: kg, Unit cost: 3")
            .visit(
                "Date: 2026-10-05, Horse: A, Owner: R, Work: Set, Place: Hill, Shoes: 4,"
                    + " Shaping: hot, Forge min: 20")
            .visit(
                "Date: 2026-10-05, Horse: B, Owner: R, Work: Set, Place: hill, Shoes: 4,"
                    + " Shaping: hot, Forge min: 20")
            .visit(
                "Date: 2026-10-05, Horse: C, Owner: R, Work: Set, Place: Dale, Shoes: 4,"
                    + " Shaping: hot, Forge min: 20")
            .visit(
                "Date: 2026-10-06, Horse: D, Owner: R, Work: Set, Place: Dale, Shoes: 4,"
                    + " Shaping: cold")
            .visit(
                "Date: 2026-10-07, Horse: D, Owner: R, Work: Set, Place: Dale, Shoes: 4,"
                    + " Shaping: hot, Forge min: 99, Reason: cancelled");
    GasBurn burn = GasBurn.of(book.jobs(), LocalDate.of(2026, 10, 1), END);
    // Three times 20, and 10 at each of two places.
    assertEquals("{2026-10-05=80}", burn.minutes().toString());
    assertEquals(new BigDecimal("80"), burn.totalMinutes());
    // 0.8 kg an hour, the default.
    assertEquals("1.067", Quantity.text(burn.explainedKg()));
    assertEquals("3", Quantity.text(burn.rateFor(new BigDecimal("4")).orElseThrow()));
    assertEquals("3", Quantity.text(burn.listCost()));
  }

  @Test
  void two_gas_items_or_one_by_the_bottle_are_no_shelf_to_burn_from() {
    WrittenBook two =
        new WrittenBook()
            .material("Item: Propane, Kind: gas, Unit: kg, Unit cost: 3")
            .material("Item: Butane, Kind: gas, Unit: kg, Unit cost: 3");
    WrittenBook bottles =
        new WrittenBook()
            .material("Item: Propane, Kind: gas, Unit: piece, Unit cost: 33")
            .material("Item: Flat, Kind: bar, Unit: kg, Unit cost: 2");
    for (WrittenBook book : List.of(two, bottles)) {
      GasBurn burn = GasBurn.of(book.jobs(), LocalDate.of(2026, 10, 1), END);
      assertEquals(true, burn.shelf().isEmpty());
      assertEquals(List.of(), burn.uses());
      assertEquals(true, burn.rateFor(BigDecimal.ONE).isEmpty(), "nothing burned");
    }
  }

  @Test
  void of_counts_of_one_size_and_day_the_last_written_stands_and_none_is_below_nothing() {
    WrittenBook book =
        book()
            .count("Date: 2026-10-05, Item: keg, Size: 0, Quantity: 9")
            .count("Date: 2026-10-05, Item: Keg, Size: 0, Quantity: 7")
            .count("Date: 2026-10-06, Item: Keg, Size: 0, Quantity: -2");
    assertEquals(List.of("10-05 CountedUp Keg 0 7", "10-06 CountedUp Keg 0 0"), movements(book));
  }

  /** What was never seen before is taken on; what was is a difference, up or down. */
  @Test
  void a_first_count_takes_on_and_a_second_finds_a_difference() {
    WrittenBook book =
        book()
            .count("Date: 2026-10-05, Item: Keg, Size: 0, Quantity: 10")
            .count("Date: 2026-10-20, Item: Keg, Size: 0, Quantity: 12");
    ShelfMonth month = month(book);
    assertEquals("40.00", month.average().takenOn().toPlainString());
    assertEquals("8.00", month.average().difference().toPlainString());
    assertEquals("8.00", month.fifo().difference().toPlainString());
    assertEquals("48.00", month.fifo().closing().toPlainString());
    assertEquals(new BigDecimal("2"), month.difference().orElseThrow());
  }

  @Test
  void a_shelf_that_nothing_moved_stands_with_nothing() {
    ShelfMonth month = month(book());
    assertEquals(KEG, month.shelf());
    assertEquals(BigDecimal.ZERO, month.closing());
    assertEquals(true, month.difference().isEmpty());
  }

  @Test
  void what_was_there_before_the_month_opens_it_though_nothing_moves_in_it() {
    WrittenBook book =
        book().purchase("Date: 2026-09-05, Item: Keg, Size: 0, Quantity: 8, Net: 36");
    ShelfMonth month = month(book);
    assertEquals(new BigDecimal("8"), month.opening());
    assertEquals(new BigDecimal("8"), month.closing());
    assertEquals("36.00", month.average().opening().toPlainString());
    assertEquals("36.00", month.fifo().opening().toPlainString());
  }

  private static ShelfMonth month(WrittenBook book) {
    return StockReplay.month(
            StockMovements.upTo(book.jobs(), END),
            List.of(KEG),
            YearMonth.of(2026, 10),
            book.book().settings().minorUnit())
        .get(0);
  }

  @ParameterizedTest
  @CsvSource({"12.3456, 12.346", "0.0004, 0", "100, 100", "1E+3, 1000", "-2.50, -2.5", "10.0, 10"})
  void a_quantity_has_at_most_three_decimals_and_none_empty(BigDecimal exact, String text) {
    assertEquals(text, Quantity.text(exact));
  }

  @ParameterizedTest
  @CsvSource({"5.14, true, 6", "5, true, 5", "5.14, false, 5.2", "5.2, false, 5.2"})
  void what_is_counted_rounds_up_to_pieces_and_what_is_weighed_to_tenths(
      BigDecimal exact, boolean pieces, BigDecimal up) {
    assertEquals(up, Quantity.up(exact, pieces));
  }

  @Test
  void a_cost_below_nothing_is_a_fault_of_the_program() {
    StockLedger ledger = new StockLedger();
    BigDecimal less = new BigDecimal("-1");
    assertThrows(IllegalArgumentException.class, () -> ledger.purchase(KEG, BigDecimal.ONE, less));
    assertThrows(IllegalArgumentException.class, () -> ledger.issue(KEG, BigDecimal.ONE, less));
    assertThrows(IllegalArgumentException.class, () -> ledger.count(KEG, BigDecimal.ONE, less));
    FifoLedger fifo = new FifoLedger();
    assertThrows(
        IllegalArgumentException.class, () -> fifo.purchase(KEG, BigDecimal.ZERO, BigDecimal.ONE));
  }
}
