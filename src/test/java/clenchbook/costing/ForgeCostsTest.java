package clenchbook.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Gas and the setting-up of the forge, worked out on paper: 0.8 kg an hour (the default) at 2.10 a
 * kilogram is 0.028 a minute.
 */
class ForgeCostsTest {
  private static WrittenBook book() {
    return new WrittenBook().setting(Setting.GAS_COST_KG, "2.10");
  }

  private static String row(String horse, String cells) {
    return "Date: 2026-10-05, Owner: Ruth, Work: Set, Place: Yard, Total min: 60, Horse: "
        + horse
        + ", "
        + cells;
  }

  @Test
  void a_hot_job_bears_its_own_burning_and_lights_the_forge_alone() {
    WrittenBook book = book().visit(row("A", "Shaping: hot, Forge min: 20, Shoes: 4"));
    // 20 min are 0.56; 5 min of heating are 0.14.
    assertEquals("0.70", CostedBook.each(book, JobCost::gas));
    assertEquals("65", CostedBook.each(book, JobCost::jobMinutes));
  }

  @Test
  void the_hot_jobs_of_a_stop_share_the_lighting_and_the_cold_ones_bear_none() {
    WrittenBook book =
        book()
            .visit(row("A", "Shaping: hot, Forge min: 20, Shoes: 4"))
            .visit(row("B", "Shaping: cold, Shoes: 4"))
            .visit(row("C", "Shaping: hot, Forge min: 10, Shoes: 4"))
            .visit(row("D", "Shaping: hot, Shoes: 4"));
    // 0.14 over three: 0.05, 0.05, 0.04; five minutes over three.
    assertEquals("0.61 0.00 0.33 0.04", CostedBook.each(book, JobCost::gas));
    assertEquals(
        "1.67 0.00 1.67 1.67",
        CostedBook.each(book, cost -> cost.setupMinutes().setScale(2, RoundingMode.HALF_UP)));
  }

  @Test
  void each_stop_lights_its_own() {
    WrittenBook book =
        book()
            .visit(row("A", "Shaping: hot, Shoes: 4"))
            .visit(row("B", "Shaping: hot, Shoes: 4").replace("Yard", "Other"))
            .visit(row("C", "Shaping: hot, Shoes: 4").replace("10-05", "10-06"));
    assertEquals("0.14 0.14 0.14", CostedBook.each(book, JobCost::gas));
  }

  @Test
  void making_shoes_burns_gas_for_the_new_ones_alone() {
    WrittenBook book =
        book()
            .material("Item: own, Kind: handmade, Making min: 15, Making forge min: 10")
            .visit(row("A", "Shaping: cold, Shoe: own, Shoes: 4, New shoes: 2"));
    assertEquals("0.56", CostedBook.each(book, JobCost::gas));
    assertEquals("90", CostedBook.each(book, JobCost::ownMinutes));
  }

  @Test
  void the_settings_say_how_long_the_lighting_takes_and_burns() {
    WrittenBook book =
        book()
            .setting(Setting.FORGE_SETUP_MIN, "8")
            .setting(Setting.FORGE_SETUP_GAS_MIN, "25")
            .visit(row("A", "Shaping: hot, Shoes: 4"));
    assertEquals("0.70", CostedBook.each(book, JobCost::gas));
    assertEquals("68", CostedBook.each(book, JobCost::jobMinutes));
  }

  /**
   * A pound is 0.45359237 kg (NIST Handbook 44, appendix C, section 4, from memory); a US gallon of
   * propane weighs 4.24 lb: fuel comparison chart of a generator maker's manual (206484GS,
   * "Physical properties", weight in pounds per gallon of liquid), and biologyinsights.com, "How
   * much does liquid propane weigh per gallon", which gives 4.2 at 60 F and 4.24 beside it.
   */
  @ParameterizedTest
  @CsvSource({
    "GAS_COST_KG, 2.10, GAS_BURN_KG, 1.2, 0.0420",
    "GAS_COST_LB, 1.00, GAS_BURN_LB, 3, 0.0500",
    "GAS_COST_GALLON, 4.24, GAS_BURN_LB, 3, 0.0500"
  })
  void burn_and_cost_may_be_given_by_the_kilogram_the_pound_or_the_gallon(
      Setting cost, String costs, Setting burn, String burns, BigDecimal perMinute) {
    WrittenBook book = new WrittenBook().setting(cost, costs).setting(burn, burns);
    assertEquals(
        perMinute,
        ForgeCosts.costPerMinute(book.book().settings()).setScale(4, RoundingMode.HALF_UP));
  }
}
