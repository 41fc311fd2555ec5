package clenchbook.comparison.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Reason;
import clenchbook.comparison.JobMaker;
import clenchbook.comparison.questions.ComparedJob;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** 5 % on 240; two of three under the list of 120, by 25 and 10. */
  @Test
  void a_work_is_told_with_its_list_its_shortfalls_and_what_a_rise_brings() {
    JobMaker friend = JobMaker.job().row(3);
    friend.charged = "95";
    JobMaker late = JobMaker.job().row(4).on(JUNE.plusDays(9));
    late.charged = "115";
    late.list = "125";
    late.work = "FULL SET";
    WrittenWork full = WrittenWork.of(price(JobMaker.job().make(), friend.make(), late.make()));
    assertEquals("FULL SET 3 jobs, list 125, 2 under by 35, 0 callbacks for 0.00", full.text());
  }

  /** A work in a line. */
  private record WrittenWork(String text) {
    static WrittenWork of(Pricing pricing) {
      WorkPrice work = pricing.works().get(0);
      return new WrittenWork(
          work.work()
              + " "
              + work.jobs()
              + " jobs, list "
              + work.list().map(BigDecimal::toPlainString).orElse("none")
              + ", "
              + work.underList()
              + " under by "
              + work.underListBy().stripTrailingZeros().toPlainString()
              + ", "
              + work.callbacks()
              + " callbacks for "
              + work.callbackCost().toPlainString());
    }
  }

  @Test
  void what_is_outside_the_period_or_cancelled_is_not_priced() {
    JobMaker cancelled = JobMaker.job().row(4).on(JUNE);
    cancelled.reason = Reason.CANCELLED;
    List<ComparedJob> jobs =
        List.of(
            JobMaker.job().row(2).on(JUNE).make(),
            JobMaker.job().row(3).on(JUNE.plusDays(3)).make(),
            cancelled.make(),
            JobMaker.job().row(5).on(JUNE.plusDays(4)).make());
    Pricing pricing = Pricing.of(jobs, JUNE, JUNE.plusDays(3), JobMaker.rates());
    assertEquals(2, pricing.works().get(0).jobs());
    assertEquals(2, pricing.callbackSums().get(0).jobs());
  }

  @Test
  void who_is_most_under_the_list_stands_first_then_by_name() {
    JobMaker[] jobs = new JobMaker[4];
    String[] horses = {"Moss", "Ash", "Fern", "Bay"};
    String[] charged = {"100", "110", "100", "120"};
    for (int i = 0; i < 4; i++) {
      jobs[i] = JobMaker.job().row(2 + i).horse(horses[i]);
      jobs[i].charged = charged[i];
    }
    JobMaker dear = JobMaker.job().row(9).horse("Bay");
    dear.charged = "130";
    assertEquals(
        List.of("Owner of Fern 1 20", "Owner of Moss 1 20", "Owner of Ash 1 10"),
        price(jobs[0].make(), jobs[1].make(), jobs[2].make(), jobs[3].make(), dear.make())
            .underList()
            .stream()
            .map(each -> each.owner() + " " + each.jobs() + " " + each.by())
            .toList());
  }

  @Test
  void a_day_has_no_more_than_its_minutes() {
    JobMaker day = JobMaker.job().row(2);
    day.jobMinutes = "1440";
    JobMaker more = JobMaker.job().row(3);
    more.jobMinutes = "1440.1";
    assertEquals(1, price(day.make(), more.make()).impossible());
  }

  /** Each Work beside an ordinary full set; what is far above the usual share names the loss. */
  @ParameterizedTest
  @CsvSource({"TRAVEL, travel", "MINUTES, minutes", "MATERIALS, materials"})
  void the_cost_furthest_above_the_usual_share_is_why(WorkPrice.Loss loss, String word) {
    JobMaker bad = JobMaker.job().row(3);
    bad.work = "Bad";
    bad.charged = "90";
    bad.list = "90";
    switch (loss) {
      case TRAVEL -> bad.travel = "60";
      case MINUTES -> bad.jobMinutes = "170";
      default -> bad.materials = "80";
    }
    WorkPrice found =
        price(JobMaker.job().make(), bad.make()).works().stream()
            .filter(work -> work.work().equals("Bad"))
            .findFirst()
            .orElseThrow();
    assertEquals(Optional.of(loss), found.loses());
    assertEquals(word, loss.word());
  }

  /** 120 charged, 81 of cost; two calls for nothing of 81 each. */
  @Test
  void callbacks_can_be_why_a_work_loses_money() {
    JobMaker one = call(5);
    one.charged = "0";
    JobMaker two = call(9);
    two.charged = "0";
    WorkPrice full =
        price(JobMaker.job().on(JUNE).make(), one.make(), two.make()).works().stream()
            .filter(work -> work.work().equals("Full set"))
            .findFirst()
            .orElseThrow();
    assertEquals(Optional.of(WorkPrice.Loss.CALLBACKS), full.loses());
    assertEquals(2, full.callbacks());
    assertMoney("162", full.callbackCost());
    assertMoney("-123", full.leftAfterCallbacks());
  }

  @Test
  void a_callback_that_paid_for_itself_is_no_gain_and_no_loss() {
    JobMaker paid = call(5);
    paid.charged = "100";
    Pricing pricing = price(JobMaker.job().on(JUNE).make(), paid.make());
    WorkPrice full = pricing.works().get(0);
    assertMoney("-19", full.callbackCost());
    assertEquals(full.margin(), full.leftAfterCallbacks());
    assertMoney("-19", pricing.callbackNetCost());
  }

  /** What just pays its way is no loss. */
  @Test
  void a_price_that_just_covers_all_costs_loses_nothing() {
    JobMaker even = JobMaker.job();
    even.charged = "81";
    assertEquals(Optional.empty(), price(even.make()).works().get(0).loses());
    even.charged = "80.99";
    assertTrue(price(even.make()).works().get(0).loses().isPresent());
  }

  @Test
  void a_free_visit_soon_after_is_a_callback_too_and_causes_none_itself() {
    JobMaker free = JobMaker.job().on(JUNE.plusDays(4)).row(30);
    free.charged = "0";
    Pricing pricing = price(JobMaker.job().on(JUNE).make(), free.make(), call(9).make());
    assertEquals(2, pricing.callbacks().size());
    assertEquals(JUNE, pricing.callbacks().get(1).cause().date());
  }

  /** A trim nails nothing on; of two rows of the last day the one with most shoes, the first. */
  @Test
  void the_latest_days_row_with_most_shoes_is_the_cause() {
    JobMaker trim = JobMaker.job().on(JUNE.plusDays(3)).row(29);
    trim.shoes = 0;
    JobMaker fronts = JobMaker.job().on(JUNE.plusDays(2)).row(24);
    fronts.shoes = 2;
    fronts.work = "Fronts";
    JobMaker same = JobMaker.job().on(JUNE.plusDays(2)).row(26);
    same.work = "Same";
    Pricing pricing =
        price(
            JobMaker.job().on(JUNE).row(20).make(),
            fronts.make(),
            JobMaker.job().on(JUNE.plusDays(2)).row(25).make(),
            same.make(),
            trim.make(),
            call(5).make());
    Callback callback = pricing.callbacks().get(0);
    assertEquals("Full set", callback.cause().work());
    assertEquals(25, callback.cause().source().row());
    assertEquals(3, callback.days());
  }

  @Test
  void callbacks_are_summed_by_work_and_method() {
    JobMaker unsaid = JobMaker.job().on(JUNE).row(3).horse("Moss");
    unsaid.shaping = Optional.empty();
    JobMaker trim = JobMaker.job().row(4).on(JUNE).horse("Fern");
    trim.shoes = 0;
    Pricing pricing =
        price(
            JobMaker.job().on(JUNE).make(),
            JobMaker.job().on(JUNE).row(5).horse("Ash").cold("30").make(),
            unsaid.make(),
            trim.make(),
            call(5).make());
    assertEquals(
        List.of(
            "Full set cold 1 0 0.00 0.00",
            "Full set hot 1 1 81.00 20.00",
            "Full set none 1 0 0.00 0.00",
            "Lost shoe hot 1 0 0.00 0.00"),
        pricing.callbackSums().stream()
            .map(
                sum ->
                    sum.work()
                        + " "
                        + sum.method()
                        + " "
                        + sum.jobs()
                        + " "
                        + sum.callbacks()
                        + " "
                        + sum.cost().setScale(2)
                        + " "
                        + sum.charged().setScale(2))
            .toList());
  }
}
