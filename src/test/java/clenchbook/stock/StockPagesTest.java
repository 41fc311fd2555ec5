package clenchbook.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FirstPage;
import clenchbook.reports.blocks.PlainBlocks;
import clenchbook.schedule.DueList;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * One month of two shelves, worked out on paper.
 *
 * <p>Keg shoes: 8 for 32.00 before the month, 4 go on 5 October, 4 come for 20.00 on the 10th, 4 go
 * on the 19th. By moving average (IAS 2.27) 16.00 + 18.00 were used and 18.00 are left; first in,
 * first out 32.00 and 20.00. Nails: 500 for 50.00, 24 and 24 used, 450 counted where 452 are
 * expected: 0.20 short.
 *
 * <p>The book's first visit leaves three whole weeks up to 31 October; in the middle one 4 shoes
 * and 24 nails went. Shoes: mean 4/3, spread 2.309 (n - 1), so the reorder point for one week's
 * lead is 4/3 + 1.65 x 2.309 = 5.14, whole 6; six weeks use 8. At or below it an order brings 6 + 8
 * - 4 = 10. Economic order (Heizer and Render, chapter 12): 52 x 4/3 a year, 6.00 an order, 1.00 a
 * year to keep one: the root of 832, 28.8; nails: 416, 6.00, 0.025: the root of 199,680, 446.9.
 */
class StockPagesTest {
  private static final String NOTHING =
      "Nothing that the book keeps stock of is at its reorder point.";

  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private static final String BESS =
      "Horse: Bess, Owner: Ruth, Work: Set, Shoe: Keg, Size: 0, Shoes: 4, Nail: E5, Nails: 24,"
          + " Date: ";

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.HOURLY_WAGE, "24")
        .setting(Setting.INPUT_TAX_RECOVERED, "yes")
        .horse("Horse: Bess, Owner: Ruth, Interval weeks: 6")
        .material("Item: Keg, Kind: keg, Size: 0, Unit cost: 4, Supplier: Smith")
        .material("Item: E5, Kind: nail, Unit: pack, Per pack: 250, Unit cost: 25, Reorder at: 460")
        .purchase("Date: 2026-09-01, Item: Keg, Size: 0, Quantity: 8, Net: 32")
        .purchase("Date: 2026-10-02, Supplier: Jones, Item: E5, Quantity: 2, Unit: pack, Net: 50")
        .visit(BESS + "2026-10-05")
        .purchase("Date: 2026-10-10, Item: Keg, Size: 0, Quantity: 4, Net: 20")
        .visit(BESS + "2026-10-19")
        .count("Date: 2026-10-20, Item: E5, Quantity: 450");
  }

  private static StockFindings findings(WrittenBook book) {
    return Stock.of(book.jobs(), DueList.of(book.jobs(), OCTOBER), OCTOBER);
  }

  private static FigureTable file(StockFindings found, String name) {
    return found.tables().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> rows(StockFindings found, String name) {
    return file(found, name).rows().stream().map(row -> String.join(",", row)).toList();
  }

  @Test
  void the_files_say_what_was_worked_out_on_paper() {
    StockFindings found = findings(book());
    assertEquals(
        List.of(
            "E5,,500,48,450,452,-2,460,nail,piece,Jones,0,450,0,2026-10-20,"
                + "0.00,50.00,0.00,-0.20,4.80,45.00,0.00,-0.20,4.80,45.00,"
                + "8.0,13.9,3,48.0,56.3,standard,250,447,0.1000",
            "Keg,0,4,8,,4,,6,keg,piece,Smith,8,4,0,,"
                + "32.00,20.00,0.00,0.00,34.00,18.00,32.00,0.00,32.00,20.00,"
                + "1.3,2.3,3,8.0,3.0,measured,10,29,4.0000"),
        rows(found, "stock"));
    assertEquals(
        List.of(
            "moving average,32.00,70.00,0.00,-0.20,38.80,63.00",
            "first in first out,32.00,70.00,0.00,-0.20,36.80,65.00"),
        rows(found, "stock-value"));
    assertEquals(
        List.of(
            "stock at the month's end,63.00,EUR",
            "cost of what was used,38.80,EUR",
            "difference by count,-0.20,EUR",
            "to order now,65.00,EUR",
            "shoeing interval,42,days"),
        rows(found, "stock-summary"));
    assertEquals(
        List.of(
            "Jones,E5,,250,piece,1,250,25.00,450,460,8.0",
            "Smith,Keg,0,10,piece,5,2,40.00,4,6,1.3"),
        rows(found, "order"));
    assertEquals(List.of("Smith,1,40.00", "Jones,1,25.00"), rows(found, "order-suppliers"));
  }

  @Test
  void the_first_page_says_what_to_order_and_what_runs_out_first() {
    FirstPage page = findings(book()).report().first().orElseThrow();
    assertEquals(
        "Order 2 things now, for €65.00; Keg 0 runs out first, in 3.0 weeks.", page.answer());
    assertEquals(
        List.of("Order from Smith for €40.00: Keg 0.", "Order from Jones for €25.00: E5."),
        page.toDo());
    Block.Picture picture = page.picture().orElseThrow();
    assertEquals("Keg 0 lasts shortest, 3.0 weeks.", picture.inWords());
    Chart.Columns chart = (Chart.Columns) picture.chart();
    assertEquals(List.of("Keg 0", "E5"), chart.categories());
    assertEquals(List.of("3.0", "56.3"), chart.series().get(0).labels());
  }

  @Test
  void the_pages_behind_it_list_orders_and_counts() {
    List<Block> blocks = findings(book()).report().blocks();
    assertEquals(
        List.of(
            "Smith: Item | On hand | Reorder at | Order | Packs | Cost (€)",
            "Keg 0 | 4 | 6 | 10 | 5 packs of 2 | 40.00 (s)",
            "= In all |  |  |  |  | 40.00"),
        PlainBlocks.table(blocks, "Smith"));
    assertEquals(
        List.of(
            "Jones: Item | On hand | Reorder at | Order | Packs | Cost (€)",
            "E5 | 450 | 460 (s) | 250 | 1 pack of 250 | 25.00 (s)",
            "= In all |  |  |  |  | 25.00"),
        PlainBlocks.table(blocks, "Jones"));
    assertEquals(
        List.of(
            "Item | Counted on | Expected | Counted | Difference | Worth (€)",
            "E5 | 20 Oct | 452 | 450 | −2 | −0.20",
            "= In all |  |  |  |  | −0.20"),
        PlainBlocks.table(blocks, "Counted on"));
    List<String> words = PlainBlocks.words(blocks);
    assertTrue(words.contains("# What to order"));
    assertTrue(words.stream().anyMatch(text -> text.contains("one shoeing interval's use (42")));
  }

  @Test
  void the_annex_values_the_stock_and_lists_each_shelf() {
    List<Block> annex = findings(book()).report().annex();
    assertEquals(
        List.of(
            "In €: Method | Opening | Bought | Taken on | By count | Used | Closing",
            "Moving average | 32.00 | 70.00 | 0.00 | −0.20 | 38.80 | 63.00",
            "First in, first out | 32.00 | 70.00 | 0.00 | −0.20 | 36.80 | 65.00"),
        PlainBlocks.table(annex, "Method"));
    assertEquals(
        List.of(
            "Item | Opening | Bought | Used | Closing | A week | Spread | Interval's use"
                + " | Reorder at | Best order",
            "E5 | 0 | 500 | 48 | 450 | 8.0 | 13.9 | 48.0 | 460 (s) | 447 (d)",
            "Keg 0 | 8 | 4 | 8 | 4 | 1.3 | 2.3 | 8.0 | 6 | 29 (d)"),
        PlainBlocks.table(annex, "Best order"));
    assertEquals(
        false, PlainBlocks.words(annex).contains("## Gas"), "no gas was bought and none burned");
  }

  @Test
  void the_months_page_has_the_orders_in_short() {
    assertEquals(
        List.of(
            "Supplier | Cost | What",
            "Smith | €40.00 (s) | Keg 0",
            "Jones | €25.00 (s) | E5",
            "= In all | €65.00 | "),
        PlainBlocks.table(findings(book()).pageBlocks(), "Supplier"));
  }

  @Test
  void one_order_alone_is_said_as_one_and_two_things_of_a_supplier_as_two() {
    WrittenBook one = book().count("Date: 2026-10-30, Item: E5, Quantity: 461");
    FirstPage page = findings(one).report().first().orElseThrow();
    assertEquals(
        "Order one thing now, for €40.00; Keg 0 runs out first, in 3.0 weeks.", page.answer());
    WrittenBook both =
        book().purchase("Date: 2026-10-21, Supplier: smith, Item: E5, Quantity: 1, Net: 0.10");
    assertEquals(
        List.of("Order 2 things from smith for €65.00: E5, Keg 0."),
        findings(both).report().first().orElseThrow().toDo(),
        "a supplier is one however the name is written");
  }

  @Test
  void a_shelf_that_is_empty_has_run_out() {
    WrittenBook out = book().count("Date: 2026-10-30, Item: Keg, Size: 0, Quantity: 0");
    assertTrue(
        findings(out).report().first().orElseThrow().answer().endsWith("; Keg 0 has run out."));
  }

  @Test
  void nothing_to_order_is_said_too() {
    WrittenBook full =
        book()
            .purchase("Date: 2026-10-21, Item: Keg, Size: 0, Quantity: 100, Net: 400")
            .count("Date: 2026-10-30, Item: E5, Quantity: 461");
    StockFindings found = findings(full);
    // 104 shoes at 4/3 a week are 78 weeks, 461 nails at 8 a week 57.6.
    assertEquals(
        "Order nothing now; E5 runs out first, in 57.6 weeks.",
        found.report().first().orElseThrow().answer());
    assertEquals(List.of(NOTHING), PlainBlocks.words(found.pageBlocks()));
    assertTrue(PlainBlocks.words(found.report().blocks()).contains(NOTHING));
  }

  @Test
  void a_book_without_stock_says_so_in_one_line() {
    WrittenBook none =
        new WrittenBook()
            .setting(Setting.BUSINESS_NAME, "Forge Lane")
            .material("Item: Keg, Kind: keg, Size: 0, Unit cost: 4")
            .material("Item: Pad, Kind: pad")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim");
    StockFindings found = findings(none);
    assertEquals(NOTHING, found.report().first().orElseThrow().answer());
    assertEquals(Optional.empty(), found.report().first().orElseThrow().picture());
    assertEquals("October 2026 · Forge Lane", found.report().subtitle());
    assertTrue(
        PlainBlocks.words(found.report().annex())
            .contains("Nothing was on the shelf, came or went this month."));
    // Where no horse is expected the interval is six weeks.
    assertTrue(rows(found, "stock-summary").contains("shoeing interval,42,days"));
  }

  @Test
  void more_used_than_the_book_knew_of_is_a_warning_where_it_keeps_that_stock() {
    WrittenBook shortOf = book().visit(BESS + "2026-10-26").visit(BESS + "2026-10-27");
    StockFindings found = findings(shortOf);
    assertEquals(
        List.of(
            "Keg 0: 4 more were used than the book knew to be there; a purchase or a count is"
                + " missing."),
        found.warnings());
    assertTrue(found.report().first().orElseThrow().toDo().containsAll(found.warnings()));
  }

  @Test
  void a_bar_and_what_is_weighed_stand_with_their_unit() {
    WrittenBook bars =
        new WrittenBook()
            .setting(Setting.INPUT_TAX_RECOVERED, "yes")
            .material("Item: Flat, Kind: bar, Unit: bar, Bar length mm: 3000, Unit cost: 12")
            .material("Item: Propane, Kind: gas, Unit: kg, Unit cost: 3, Reorder at: 12.5")
            .material("Item: Own, Kind: handmade, Bar: Flat, Length mm: 300")
            .purchase("Date: 2026-10-01, Item: Flat, Quantity: 2, Net: 24")
            .purchase("Date: 2026-10-01, Item: Propane, Quantity: 11, Unit: kg, Net: 33")
            .visit("Date: 2026-10-05, Horse: A, Owner: Ruth, Work: Set, Shoe: Own, Shoes: 4")
            .count("Date: 2026-10-31, Item: Flat, Quantity: 1.5");
    List<Block> blocks = findings(bars).report().blocks();
    assertEquals(
        "Propane | 11 kg | 12.5 (s) | 2 kg |  | 6.00 (s)",
        PlainBlocks.table(blocks, "(no supplier given)").get(1));
    // Two bars less four shoes of a tenth: 1.6 expected.
    assertEquals(
        "Flat | 31 Oct | 1.6 bar | 1.5 bar | −0.1 | −1.20",
        PlainBlocks.table(blocks, "Counted on").get(1));
    List<String> shelves = PlainBlocks.table(findings(bars).report().annex(), "Best order");
    assertEquals("Own | 0 | 0 | 4 | 0 | 0.0 | – | 0.0 | – | –", shelves.get(2));
  }
}
