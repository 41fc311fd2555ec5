package clenchbook.stock.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.jobs.StockKey;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StockLedgerTest {

  private static final StockKey SHOE = new StockKey("Keg front", "0");

  private final StockLedger ledger = new StockLedger();
  private final FifoLedger fifo = new FifoLedger();

  // Opening 300 @ 20.00, 100 @ 20.20, 200 @ 20.70, 200 @ 21.00, sold 450: published periodic
  // example (coursehero.com file 6386813): weighted average 20.45, end 7,157.50, COGS 9,202.50;
  // FIFO end 7,305, COGS 9,055. All purchases come before the sale, so moving = periodic.
  @Test
  void the_eight_hundred_unit_example_gives_its_published_average_cost() {
    buyTheEightHundred();
    BigDecimal unit = ledger.use(SHOE, money("450"), BigDecimal.ZERO);
    assertMoney("20.45", unit);
    assertMoney("9202.50", unit.multiply(money("450")));
    assertMoney("7157.50", ledger.value(SHOE));
  }

  @Test
  void the_eight_hundred_unit_example_gives_its_published_fifo_cost() {
    buyTheEightHundred();
    assertMoney("9055", fifo.use(SHOE, money("450")));
    assertMoney("7305", fifo.value(SHOE));
  }

  // Kieso, Weygandt, Warfield, Intermediate Accounting, chapter 8 (from memory): moving average
  // 4.30, then 4.45; cost of goods sold 17,200, end 26,700; FIFO end 27,100, COGS 16,800.
  @Test
  void the_perpetual_example_of_intermediate_accounting_gives_its_moving_average() {
    buy("2000", "8000.00");
    buy("6000", "26400.00");
    BigDecimal unit = ledger.use(SHOE, money("4000"), BigDecimal.ZERO);
    BigDecimal fifoCost = fifo.use(SHOE, money("4000"));
    buy("2000", "9500.00");
    assertMoney("4.30", unit);
    assertMoney("4.45", ledger.average(SHOE).orElseThrow());
    assertMoney("26700", ledger.value(SHOE));
    assertMoney("16800", fifoCost);
    assertMoney("27100", fifo.value(SHOE));
  }

  @Test
  void an_item_never_bought_costs_its_list_price_of_the_day() {
    assertMoney("4.10", ledger.use(SHOE, money("4"), money("4.10")));
    assertMoney("0", ledger.onHand(SHOE));
    assertMoney("4.60", ledger.use(SHOE, money("4"), money("4.60")));
  }

  @Test
  void another_size_of_a_bought_item_still_costs_its_list_price() {
    buy("10", "50.00");
    assertMoney("6.25", ledger.use(new StockKey("Keg front", "1"), money("2"), money("6.25")));
  }

  @Test
  void stock_never_falls_below_none_and_keeps_its_last_average() {
    buy("10", "50.00");
    StockLedger.Issue issue = ledger.issue(SHOE, money("14"), money("9"));
    assertMoney("5", issue.unitCost());
    assertMoney("10", issue.taken());
    assertMoney("4", issue.beyond());
    assertMoney("0", ledger.onHand(SHOE));
    assertMoney("5", ledger.use(SHOE, money("1"), money("9")));
    buy("10", "70.00");
    assertMoney("7", ledger.average(SHOE).orElseThrow());
  }

  @Test
  void a_count_resets_the_quantity_at_the_current_average() {
    buy("100", "400.00");
    ledger.use(SHOE, money("30"), BigDecimal.ZERO);
    assertMoney("-4", ledger.count(SHOE, money("66"), money("9")));
    assertMoney("66", ledger.onHand(SHOE));
    assertMoney("264", ledger.value(SHOE));
  }

  @Test
  void counted_stock_never_bought_enters_the_average_at_list_cost() {
    ledger.count(SHOE, money("20"), money("4"));
    assertFalse(ledger.bought(SHOE));
    assertMoney("5", ledger.use(SHOE, money("10"), money("5")));
    buy("10", "60.00");
    assertTrue(ledger.bought(SHOE));
    assertMoney("5", ledger.average(SHOE).orElseThrow());
  }

  @Test
  void thirds_of_a_cent_are_not_lost_from_the_total() {
    buy("3", "0.025");
    BigDecimal unit = ledger.use(SHOE, money("3"), BigDecimal.ZERO);
    BigDecimal cost = StockLedger.settled(unit.multiply(money("3")));
    assertMoney("0.03", cost.setScale(2, RoundingMode.HALF_UP));
  }

  @Test
  void what_was_used_and_what_is_left_add_up_to_what_was_bought() {
    long seed = 20261031L;
    Random random = new Random(seed);
    BigDecimal available = BigDecimal.ZERO;
    BigDecimal usedByAverage = BigDecimal.ZERO;
    BigDecimal usedByFifo = BigDecimal.ZERO;
    for (int event = 0; event < 500; event++) {
      BigDecimal pieces = BigDecimal.valueOf(1 + random.nextInt(40));
      if (random.nextInt(3) == 0) {
        BigDecimal cost = BigDecimal.valueOf(100 + random.nextInt(90_000), 2);
        buy(pieces.toPlainString(), cost.toPlainString());
        available = available.add(cost);
      } else {
        StockLedger.Issue issue = ledger.issue(SHOE, pieces, BigDecimal.ONE);
        usedByAverage = usedByAverage.add(issue.unitCost().multiply(issue.taken()));
        usedByFifo = usedByFifo.add(fifo.use(SHOE, pieces));
      }
      String at = "seed " + seed + ", event " + event;
      assertEquals(
          StockLedger.settled(available),
          StockLedger.settled(usedByAverage.add(ledger.value(SHOE))),
          at);
      assertEquals(
          StockLedger.settled(available),
          StockLedger.settled(usedByFifo.add(fifo.value(SHOE))),
          at);
      assertEquals(0, ledger.onHand(SHOE).compareTo(fifo.onHand(SHOE)), at);
    }
  }

  @Test
  void with_one_price_both_methods_agree() {
    buy("40", "200.00");
    BigDecimal average = ledger.use(SHOE, money("15"), BigDecimal.ZERO).multiply(money("15"));
    assertMoney("75", average);
    assertMoney("75", fifo.use(SHOE, money("15")));
  }

  @Test
  void fifo_counts_take_the_missing_from_the_oldest_and_price_the_found_at_the_latest() {
    fifo.purchase(SHOE, money("10"), money("40"));
    fifo.purchase(SHOE, money("10"), money("60"));
    assertMoney("-8", fifo.count(SHOE, money("18"), money("9")));
    assertMoney("12", fifo.count(SHOE, money("20"), money("9")));
    assertMoney("104", fifo.value(SHOE));
  }

  @Test
  void a_purchase_of_nothing_or_a_negative_use_is_a_programming_fault() {
    assertThrows(
        IllegalArgumentException.class, () -> ledger.purchase(SHOE, money("0"), money("1")));
    assertThrows(IllegalArgumentException.class, () -> ledger.use(SHOE, money("-1"), money("1")));
    assertThrows(IllegalArgumentException.class, () -> ledger.count(SHOE, money("-1"), money("1")));
  }

  private void buyTheEightHundred() {
    buy("300", "6000.00");
    buy("100", "2020.00");
    buy("200", "4140.00");
    buy("200", "4200.00");
  }

  private void buy(String pieces, String cost) {
    ledger.purchase(SHOE, money(pieces), money(cost));
    fifo.purchase(SHOE, money(pieces), money(cost));
  }

  private static BigDecimal money(String text) {
    return new BigDecimal(text);
  }

  private static void assertMoney(String expected, BigDecimal actual) {
    assertEquals(0, new BigDecimal(expected).compareTo(actual), () -> expected + " but " + actual);
  }
}
