package clenchbook.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Reason;
import clenchbook.comparison.pricing.Callback;
import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.comparison.questions.ComparedJob;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PricingTest {
  private static final LocalDate JUNE = LocalDate.of(2025, 6, 2);

  private static Pricing price(ComparedJob... jobs) {
    return Pricing.of(
        List.of(jobs).stream().sorted(ComparedJob.ORDER).toList(),
        JobMaker.FIRST,
        JobMaker.LAST,
        JobMaker.rates());
  }

  private static void assertMoney(String expected, BigDecimal actual) {
    assertEquals(0, new BigDecimal(expected).compareTo(actual), actual.toString());
  }

  /**
   * Costs 24 + 1 + 2 + 6 + 8 and 80 minutes at 30 an hour: 41 + 40 = 81, and 91 with 20 minutes
   * more. Mean 86; at 15 % margin 172 / (2 · 0.85) = 101.176...
   */
  @Test
  void a_price_meets_the_wage_or_the_target() {
    JobMaker slow = JobMaker.job().row(3);
    slow.jobMinutes = "90";
    WorkPrice full = price(JobMaker.job().make(), slow.make()).works().get(0);
    assertMoney("86.00", full.forWage());
    assertMoney("101.18", full.forTarget());
    assertMoney("68", full.margin());
    assertMoney("12.00", full.riseBrings());
    assertTrue(full.loses().isEmpty());
  }

  @Test
  void who_is_billed_under_the_list_stands_by_name_and_amount() {
    JobMaker friend = JobMaker.job().row(3).horse("Moss");
    friend.charged = "95";
    JobMaker free = JobMaker.job().row(4).horse("Fern");
    free.charged = "0";
    Pricing pricing = price(JobMaker.job().make(), friend.make(), free.make());
    assertEquals(1, pricing.underList().size());
    UnderList under = pricing.underList().get(0);
    assertEquals("Owner of Moss", under.owner());
    assertMoney("25", under.by());
  }

  @Test
  void work_that_loses_money_says_why() {
    JobMaker far = JobMaker.job().row(3);
    far.work = "Trim";
    far.charged = "40";
    far.materials = "0";
    far.gas = "0";
    far.jobMinutes = "20";
    far.travel = "38";
    WorkPrice trim =
        price(JobMaker.job().make(), far.make()).works().stream()
            .filter(work -> work.work().equals("Trim"))
            .findFirst()
            .orElseThrow();
    assertEquals(Optional.of(WorkPrice.Loss.TRAVEL), trim.loses());
  }

  @Test
  void work_done_for_nothing_is_said_to_be() {
    JobMaker free = JobMaker.job();
    free.charged = "0";
    assertEquals(Optional.of(WorkPrice.Loss.FREE), price(free.make()).works().get(0).loses());
  }

  private static JobMaker call(int days) {
    JobMaker call = JobMaker.job().on(JUNE.plusDays(days)).row(20 + days);
    call.work = "Lost shoe";
    call.reason = Reason.LOST_SHOE;
    call.shoes = 1;
    call.newShoes = 0;
    call.charged = "20";
    return call;
  }

  /** The call costs 81 like any of these jobs and brings 20: 61 go back to the full set. */
  @Test
  void a_callback_is_carried_back_to_the_work_and_method_that_caused_it() {
    Pricing pricing = price(JobMaker.job().on(JUNE).make(), call(14).make());
    Callback callback = pricing.callbacks().get(0);
    assertEquals("Full set", callback.cause().work());
    assertEquals(14, callback.days());
    assertMoney("61", callback.netCost());
    CallbackSum sum =
        pricing.callbackSums().stream()
            .filter(each -> each.callbacks() > 0)
            .findFirst()
            .orElseThrow();
    assertEquals("Full set", sum.work());
    assertEquals("hot", sum.method());
    assertMoney("61", sum.netCost());
  }

  @Test
  void a_visit_after_the_callback_days_is_no_callback() {
    assertTrue(price(JobMaker.job().on(JUNE).make(), call(15).make()).callbacks().isEmpty());
  }

  @Test
  void a_visit_of_the_same_day_or_another_horse_is_no_cause() {
    assertTrue(price(JobMaker.job().on(JUNE).make(), call(0).make()).callbacks().isEmpty());
    assertTrue(
        price(JobMaker.job().on(JUNE).make(), call(3).horse("Moss").make()).callbacks().isEmpty());
  }

  @Test
  void two_calls_in_a_row_both_go_back_to_the_shoeing() {
    Pricing pricing = price(JobMaker.job().on(JUNE).make(), call(5).make(), call(9).make());
    assertEquals(2, pricing.callbacks().size());
    assertEquals("Full set", pricing.callbacks().get(1).cause().work());
  }

  @Test
  void a_shoeing_before_the_period_can_cause_a_callback_in_it() {
    List<ComparedJob> jobs = List.of(JobMaker.job().on(JUNE).make(), call(5).make());
    Pricing pricing = Pricing.of(jobs, JUNE.plusDays(2), JobMaker.LAST, JobMaker.rates());
    assertEquals(1, pricing.callbacks().size());
    assertEquals(0, pricing.callbackSums().get(0).jobs());
  }
}
