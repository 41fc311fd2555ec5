package clenchbook.stock.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderRuleTest {

  // Heizer and Render, Operations Management, chapter 12 "Inventory Management", example 3: 1,000
  // a year, 10 an order, 0.50 a piece kept, 200; the second row by the formula, 2 x 1200 x 10 /
  // 0.5.
  @ParameterizedTest
  @CsvSource({"1000, 10, 0.50, 200", "1200, 10, 0.50, 219"})
  void the_economic_quantity_is_that_of_the_worked_example(
      BigDecimal demand, BigDecimal order, BigDecimal holding, BigDecimal expected) {
    BigDecimal quantity = OrderRule.economicQuantity(demand, order, holding).orElseThrow();
    assertEquals(0, expected.compareTo(quantity.setScale(0, RoundingMode.HALF_UP)));
  }

  @Test
  void without_a_cost_of_ordering_or_keeping_there_is_no_economic_quantity() {
    assertTrue(OrderRule.economicQuantity(number("10"), BigDecimal.ZERO, number("1")).isEmpty());
    assertTrue(OrderRule.economicQuantity(number("10"), number("1"), BigDecimal.ZERO).isEmpty());
    assertTrue(OrderRule.economicQuantity(BigDecimal.ZERO, number("1"), number("1")).isEmpty());
  }

  // Heizer and Render, chapter 12 (from memory): 32 a day with 3 days' lead, 96 pieces.
  @Test
  void steady_use_reorders_at_demand_over_the_lead_time() {
    WeeklyUse steady = new WeeklyUse(26, number("32"), Optional.of(BigDecimal.ZERO));
    assertEquals(0, number("96").compareTo(OrderRule.reorderPoint(steady, number("3"))));
  }

  // Heizer and Render, chapter 12 (from memory): mean 350 over the lead time, sd 10, service
  // 95 %, z 1.65 from the table: 366.5. The exact z 1.644854 would give 366.45.
  @Test
  void varying_use_adds_the_safety_stock_of_the_worked_example() {
    WeeklyUse varying = new WeeklyUse(26, number("350"), Optional.of(number("10")));
    assertEquals(0, number("366.5").compareTo(OrderRule.reorderPoint(varying, number("1"))));
  }

  @Test
  void the_spread_grows_with_the_root_of_the_lead_time() {
    WeeklyUse varying = new WeeklyUse(26, number("10"), Optional.of(number("2")));
    assertEquals(0, number("46.6").compareTo(OrderRule.reorderPoint(varying, number("4"))));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 6, 30, 25, 0", // above the reorder point
    "6, 6, 30, 25, 50", // at it: 30 wanted, two packs
    "0, 6, 19, 25, 25", // 25 wanted, one pack exactly
    "0, 6, 19.1, 25, 50",
    "0, 0, 0, 25, 0" // nothing is ever used
  })
  void orders_are_whole_packs_up_to_one_interval_above_the_reorder_point(
      BigDecimal onHand,
      BigDecimal reorder,
      BigDecimal interval,
      BigDecimal pack,
      BigDecimal want) {
    assertEquals(0, want.compareTo(OrderRule.order(onHand, reorder, interval, pack)));
  }

  @Test
  void mean_and_spread_are_those_of_the_weeks() {
    WeeklyUse use =
        WeeklyUse.of(
            Stream.of("2", "4", "4", "4", "5", "5", "7", "9").map(BigDecimal::new).toList());
    assertEquals(0, number("5").compareTo(use.mean()));
    // Sum of squares about the mean 32, over 7: the usual example with n - 1.
    assertEquals("2.1380899353", use.spread().orElseThrow().toPlainString());
    assertTrue(WeeklyUse.of(List.of(number("3"))).spread().isEmpty());
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }
}
