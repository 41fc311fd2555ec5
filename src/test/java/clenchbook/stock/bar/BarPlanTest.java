package clenchbook.stock.bar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.schedule.DueList;
import clenchbook.stock.Stock;
import clenchbook.stock.StockFindings;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

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
