package clenchbook.stock.bar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.PlainBlocks;
import clenchbook.schedule.DueList;
import clenchbook.stock.Stock;
import clenchbook.stock.StockFindings;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarPlanTest {

  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  private final WrittenBook book =
      new WrittenBook()
          .material("Item: Flat, Kind: bar, Unit: bar, Bar length mm: 3000, Unit cost: 12")
          .material("Item: Plain, Kind: handmade, Size: 0, Bar: Flat, Length mm: 300, Cut mm: 2")
          .material("Item: Plain, Kind: handmade, Size: 2, Bar: Flat, Length mm: 350, Cut mm: 2")
          .material("Item: Keg, Kind: keg, Unit cost: 4");

  @Test
  void the_due_horses_usual_shoes_say_what_bar_is_needed() {
    horse("Bess", 6).visit(plain("2026-10-05", "Bess", "0: 4"));
    horse("Dun", 6).visit(plain("2026-10-06", "Dun", "0: 2; 2: 2"));
    horse("Far", 12).visit(plain("2026-10-20", "Far", "0: 4")); // due in January
    horse("Keg only", 6).visit("Date: 2026-10-06, Horse: Keg only, Work: Set, Shoe: Keg, Shoes: 4");
    List<List<String>> needs = table("bar-needs").rows();
    assertEquals(2, needs.size());
    assertEquals(
        List.of("Flat", "", "Plain", "2", "350", "2", "2", "Dun", "yes", "13.78", "0.08"),
        needs.get(0));
    assertEquals(
        List.of("Flat", "", "Plain", "0", "300", "2", "6", "Bess; Dun", "yes"),
        needs.get(1).subList(0, 9));
    assertTrue(table("cutting-plan").rows().isEmpty());
  }

  @Test
  void a_short_interval_counts_each_time_it_comes_due_and_overdue_counts_at_once() {
    horse("Bess", 2).visit(plain("2026-10-10", "Bess", "0: 4")); // overdue since 24 October
    // 1 November, 15 November, 29 November.
    assertEquals("12", table("bar-needs").rows().get(0).get(6));
  }

  @Test
  void from_ten_lengths_up_there_is_a_plan_with_its_proof() {
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit(plain("2026-10-05", name, "0: 4"));
    }
    FigureTable plan = table("cutting-plan");
    assertEquals(2, plan.rows().size());
    List<String> first = plan.rows().get(0);
    // Nine of 300 mm and eight cuts between them fit 3,000 mm; ten need 3,018.
    assertEquals("9 × 300", first.get(plan.columns().indexOf("cuts")));
    assertEquals("282", first.get(plan.columns().indexOf("offcut_mm")));
    assertEquals("2", first.get(plan.columns().indexOf("bars_in_all")));
    assertEquals("2", first.get(plan.columns().indexOf("at_least")));
    assertEquals("yes", first.get(plan.columns().indexOf("proved")));
    // 6,000 mm of bar less 12 shoes of 300 mm is 2,400 mm: 200 mm a shoe, 0.80 of a 12.00 bar.
    assertEquals("2400", first.get(plan.columns().indexOf("waste_mm")));
    assertEquals("200", first.get(plan.columns().indexOf("waste_mm_per_shoe")));
    assertEquals("0.8000", first.get(plan.columns().indexOf("waste_cost_per_shoe")));
  }

  @Test
  void a_bar_priced_by_mass_gives_the_waste_its_cost_too() {
    book.material(
            "Item: Heavy, Kind: bar, Unit: kg, Section: 20 x 8 mm, Bar length mm: 3000,"
                + " Unit cost: 2")
        .material("Item: Wide, Kind: handmade, Bar: Heavy, Length mm: 300, Cut mm: 2");
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit("Date: 2026-10-05, Work: Set, Shoe: Wide, Shoes: 4, Horse: " + name);
    }
    FigureTable plan = table("cutting-plan");
    // 200 mm of 20 x 8 at 1.256 kg/m and 2.00 a kg (EN 10058 tables print 1.26, from memory).
    assertEquals("0.5024", plan.rows().get(0).get(plan.columns().indexOf("waste_cost_per_shoe")));
  }

  @Test
  void a_shoe_longer_than_its_bar_is_said_and_left_out_of_the_plan() {
    book.material("Item: Giant, Kind: handmade, Bar: Flat, Length mm: 3100");
    horse("Shire", 6).visit("Date: 2026-10-05, Horse: Shire, Work: Set, Shoe: Giant, Shoes: 4");
    assertEquals("no", table("bar-needs").rows().get(0).get(8));
    assertEquals(List.of("Giant needs 3100 mm, longer than a bar of Flat."), findings().warnings());
  }

  @Test
  void inches_that_are_no_whole_millimetres_still_fit_exactly() {
    // Twelve pieces of 12 in are one bar of 12 ft to the hundredth of a millimetre.
    book.material("Item: Long, Kind: bar, Bar length mm: 3657.6, Unit cost: 12")
        .material("Item: Foot, Kind: handmade, Bar: Long, Length mm: 304.8");
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit("Date: 2026-10-05, Work: Set, Shoe: Foot, Shoes: 4, Horse: " + name);
    }
    List<List<String>> rows = table("cutting-plan").rows();
    assertEquals(1, rows.size());
    assertEquals("12 × 304.8", rows.get(0).get(5));
    assertEquals("0", rows.get(0).get(6));
  }

  /** Lengths in inches are those in millimetres over 25.4, the inch's definition of 1959. */
  @Test
  void the_plans_file_says_all_of_each_way_to_cut() {
    twelveShoes();
    FigureTable plan = table("cutting-plan");
    assertEquals(
        List.of(
            "Flat,,3000,1,1,9 × 300,282,2,2,yes,12,2400,200,0.8000,"
                + "118.11,9 × 11.81,11.10,94.49,7.87",
            "Flat,,3000,2,1,3 × 300,2094,2,2,yes,12,2400,200,0.8000,"
                + "118.11,3 × 11.81,82.44,94.49,7.87"),
        plan.rows().stream().map(row -> String.join(",", row)).toList());
  }

  @Test
  void the_page_lists_needs_plan_and_waste_and_says_how_sure_it_is() {
    twelveShoes();
    List<Block> blocks = findings().report().blocks();
    assertEquals(
        List.of(
            "Lengths needed: Shoe | Length (mm) | Cut (mm) | How many | For",
            "Plain 0 | 300 | 2 | 12 | A, B, C"),
        PlainBlocks.table(blocks, "Lengths needed"));
    assertEquals(
        List.of(
            "Cutting plan: 2 bars of 3000 mm: Bars | Cut each into (mm) | Offcut (mm)",
            "1 | 9 × 300 | 282",
            "1 | 3 × 300 | 2094"),
        PlainBlocks.table(blocks, "Cutting plan"));
    assertEquals(
        List.of(
            "Waste: Shoes | Cuts and offcuts (mm) | A shoe (mm) | A shoe (€)",
            "12 | 2400 | 200 | 0.8000 (s)"),
        PlainBlocks.table(blocks, "Waste"));
    List<String> words = PlainBlocks.words(blocks);
    assertTrue(words.containsAll(List.of("# Bar", "## Flat")));
    assertTrue(
        words.stream().anyMatch(text -> text.startsWith("No plan needs fewer bars: proved.")));
    assertFalse(words.stream().anyMatch(text -> text.startsWith("Fewer than ten lengths")));
  }

  @Test
  void it_says_so_in_inches_where_units_are_imperial() {
    book.setting(Setting.UNITS, "imperial");
    twelveShoes();
    assertEquals(
        List.of(
            "Cutting plan: 2 bars of 118.11 in: Bars | Cut each into (in) | Offcut (in)",
            "1 | 9 × 11.81 | 11.10",
            "1 | 3 × 11.81 | 82.44"),
        PlainBlocks.table(findings().report().blocks(), "Cutting plan"));
  }

  @ParameterizedTest
  @CsvSource({"1, 9, false", "2, 10, true"})
  void nine_lengths_are_no_plan_and_ten_are(String last, int count, boolean planned) {
    horse("A", 6).visit(plain("2026-10-05", "A", "0: 4"));
    horse("B", 6).visit(plain("2026-10-05", "B", "0: 4"));
    horse("C", 6)
        .visit(plain("2026-10-05", "C", "0: " + last).replace("Shoes: 4", "Shoes: " + last));
    assertEquals(Integer.toString(count), table("bar-needs").rows().get(0).get(6));
    assertEquals(planned, !table("cutting-plan").rows().isEmpty());
    assertEquals(
        !planned,
        PlainBlocks.words(findings().report().blocks()).stream()
            .anyMatch(text -> text.startsWith("Fewer than ten lengths")));
  }

  @Test
  void a_bar_without_a_length_is_said_and_planned_nowhere() {
    book.material("Item: Rod, Kind: bar, Unit: bar, Unit cost: 12")
        .material("Item: Ring, Kind: handmade, Bar: Rod, Length mm: 300");
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit("Date: 2026-10-05, Work: Set, Shoe: Ring, Shoes: 4, Horse: " + name);
    }
    assertEquals("yes", table("bar-needs").rows().get(0).get(8));
    assertTrue(table("cutting-plan").rows().isEmpty());
    assertEquals(
        List.of("Rod has no Bar length in Materials, so no cutting plan can be made."),
        findings().warnings());
    assertFalse(
        PlainBlocks.words(findings().report().blocks()).stream()
            .anyMatch(text -> text.startsWith("Fewer than ten lengths")));
  }

  @Test
  void a_shoe_as_long_as_its_bar_takes_a_bar_each() {
    book.material("Item: Whole, Kind: handmade, Bar: Flat, Length mm: 3000");
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit("Date: 2026-10-05, Work: Set, Shoe: Whole, Shoes: 4, Horse: " + name);
    }
    List<String> row = table("cutting-plan").rows().get(0);
    assertEquals("12", row.get(7));
    assertEquals("0", row.get(11), "nothing is wasted");
  }

  @Test
  void a_shoe_whose_length_is_not_given_needs_no_bar_that_could_be_told() {
    book.material("Item: Guess, Kind: handmade, Bar: Flat");
    horse("A", 6).visit("Date: 2026-10-05, Work: Set, Shoe: Guess, Shoes: 4, Horse: A");
    assertTrue(table("bar-needs").rows().isEmpty());
  }

  @Test
  void a_horse_shod_in_two_rows_is_named_once() {
    horse("A", 6)
        .visit(plain("2026-10-05", "A", "0: 2").replace("Shoes: 4", "Shoes: 2"))
        .visit(plain("2026-10-05", "A", "0: 2").replace("Shoes: 4", "Shoes: 2"));
    List<String> need = table("bar-needs").rows().get(0);
    assertEquals(List.of("4", "A"), need.subList(6, 8));
  }

  /** Hundredths of a millimetre would be 300,000 steps: tenths do, each length rounded up. */
  @Test
  void lengths_with_nothing_in_common_are_planned_in_tenths_of_a_millimetre() {
    book.material("Item: Odd, Kind: handmade, Bar: Flat, Length mm: 300.01, Cut mm: 1.99")
        .material("Item: Even, Kind: handmade, Bar: Flat, Length mm: 351.07, Cut mm: 1.99");
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit("Date: 2026-10-05, Work: Set, Shoe: Odd, Shoes: 4, Horse: " + name);
    }
    horse("D", 6).visit("Date: 2026-10-05, Work: Set, Shoe: Even, Shoes: 1, Horse: D");
    FigureTable plan = table("cutting-plan");
    assertTrue(
        plan.rows().stream().anyMatch(row -> row.get(5).contains("300.1")), plan.rows()::toString);
    assertTrue(plan.rows().stream().anyMatch(row -> row.get(5).contains("351.1")));
  }

  private void twelveShoes() {
    for (String name : List.of("A", "B", "C")) {
      horse(name, 6).visit(plain("2026-10-05", name, "0: 4"));
    }
  }

  private WrittenBook horse(String name, int weeks) {
    return book.horse("Owner: Ann, Interval weeks: " + weeks + ", Horse: " + name);
  }

  private static String plain(String day, String horse, String sizes) {
    return "Date: "
        + day
        + ", Work: Set, Shoe: Plain, Shoes: 4, Horse: "
        + horse
        + ", Size: "
        + sizes;
  }

  private StockFindings findings() {
    Jobs jobs = book.jobs();
    return Stock.of(jobs, DueList.of(jobs, OCTOBER), OCTOBER);
  }

  private FigureTable table(String name) {
    return findings().tables().stream()
        .filter(t -> t.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
