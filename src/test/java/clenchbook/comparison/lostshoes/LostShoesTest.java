package clenchbook.comparison.lostshoes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.MaterialKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.comparison.JobMaker;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Verdict;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Proportion;
import clenchbook.statistics.StudentT;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class LostShoesTest {
  private static final LocalDate JUNE = LocalDate.of(2025, 6, 1);

  private static LostShoes all(List<ComparedJob> jobs) {
    return LostShoes.of(jobs, JobMaker.FIRST, JobMaker.LAST);
  }

  private static JobMaker visit(String horse, int week, boolean hot, int shoes) {
    JobMaker job = JobMaker.job().horse(horse).on(JUNE.plusWeeks(week)).row(week + 2);
    job.shaping = Optional.of(hot ? Shaping.HOT : Shaping.COLD);
    job.shoes = shoes;
    job.newShoes = shoes;
    return job;
  }

  private static JobMaker finding(JobMaker job, int lost) {
    job.lost = OptionalInt.of(lost);
    return job;
  }

  @Test
  void a_loss_stands_at_the_visit_that_finds_it_and_the_last_visit_is_left_out() {
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 4).make(),
                finding(visit("a", 6, true, 4), 1).make(),
                visit("a", 12, true, 4).make()));
    assertEquals(new LostShoes.Tally(8, 1), lost.hot());
    assertEquals(0, lost.cold().on());
    assertTrue(lost.difference().isEmpty());
  }

  @Test
  void a_call_for_a_lost_shoe_leaves_the_others_on() {
    JobMaker call = finding(visit("a", 2, false, 1), 1);
    call.reason = Reason.LOST_SHOE;
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 4).make(),
                call.make(),
                finding(visit("a", 6, true, 4), 2).make()));
    assertEquals(new LostShoes.Tally(4 + 3, 1 + 1.5), lost.hot());
    assertEquals(new LostShoes.Tally(1, 0.5), lost.cold());
  }

  @Test
  void a_call_that_does_not_say_how_many_lost_what_it_nailed_on() {
    JobMaker call = visit("a", 2, true, 1);
    call.reason = Reason.LOST_SHOE;
    LostShoes lost =
        all(List.of(visit("a", 0, true, 4).make(), call.make(), visit("a", 6, true, 4).make()));
    assertEquals(new LostShoes.Tally(8, 1), lost.hot());
  }

  @Test
  void no_more_can_be_lost_than_were_on() {
    LostShoes lost =
        all(List.of(visit("a", 0, true, 2).make(), finding(visit("a", 6, true, 4), 3).make()));
    assertEquals(new LostShoes.Tally(2, 2), lost.hot());
  }

  @Test
  void aluminium_takes_its_share_of_a_loss_but_never_counts() {
    JobMaker light = visit("a", 0, false, 2).row(3);
    light.kind = Optional.of(MaterialKind.ALUMINIUM);
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 2).make(),
                light.make(),
                finding(visit("a", 6, true, 4), 1).make()));
    assertEquals(new LostShoes.Tally(2, 0.5), lost.hot());
    assertEquals(0, lost.cold().on());
  }

  @Test
  void rows_of_one_day_are_one_visit() {
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 2).make(),
                visit("a", 0, false, 2).row(9).make(),
                finding(visit("a", 6, true, 4), 2).make()));
    assertEquals(new LostShoes.Tally(2, 1), lost.hot());
    assertEquals(new LostShoes.Tally(2, 1), lost.cold());
  }

  @Test
  void a_loss_belongs_to_the_period_that_finds_it() {
    List<ComparedJob> jobs =
        List.of(
            visit("a", 0, true, 4).make(),
            finding(visit("a", 6, true, 4), 1).make(),
            finding(visit("a", 12, true, 4), 2).make());
    LostShoes late = LostShoes.of(jobs, JUNE.plusWeeks(7), JobMaker.LAST);
    assertEquals(new LostShoes.Tally(4, 2), late.hot());
    LostShoes early = LostShoes.of(jobs, JobMaker.FIRST, JUNE.plusWeeks(7));
    assertEquals(new LostShoes.Tally(4, 1), early.hot());
  }

  @Test
  void cancelled_visits_and_fees_are_no_visits() {
    JobMaker cancelled = finding(visit("a", 3, true, 4), 4);
    cancelled.reason = Reason.CANCELLED;
    JobMaker fee = visit("a", 4, true, 0);
    fee.fee = true;
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 4).make(),
                cancelled.make(),
                fee.make(),
                visit("a", 6, true, 4).make()));
    assertEquals(new LostShoes.Tally(4, 0), lost.hot());
  }

  @Test
  void the_difference_stands_with_newcombes_interval_and_one_that_leaves_out_horses() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int horse = 0; horse < 6; horse++) {
      boolean hot = horse % 2 == 0;
      jobs.add(visit("h" + horse, 0, hot, 4).make());
      jobs.add(finding(visit("h" + horse, 6, hot, 4), horse == 5 ? 2 : horse % 3 % 2).make());
    }
    LostShoes lost = all(jobs);
    assertEquals(new LostShoes.Tally(12, 1), lost.hot());
    assertEquals(new LostShoes.Tally(12, 3), lost.cold());
    Interval newcombe = new Proportion(1, 12).differenceFrom(new Proportion(3, 12));
    assertEquals(Optional.of(newcombe), lost.plain());
    assertEquals(byHand(), lost.leaveOneOut().orElseThrow().width(), 1e-12);
    assertEquals(Verdict.NO_DIFFERENCE_SHOWN, lost.verdict());
  }

  /** Six on, of which two were put on hot, two cold, two not said; a call nailed one on. */
  @Test
  void what_a_call_leaves_on_keeps_its_method_in_proportion() {
    JobMaker unsaid = visit("a", 0, true, 2).row(4);
    unsaid.shaping = Optional.empty();
    JobMaker call = finding(visit("a", 2, true, 1), 3);
    call.reason = Reason.LOST_SHOE;
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 2).row(2).make(),
                visit("a", 0, false, 2).row(3).make(),
                unsaid.make(),
                call.make(),
                finding(visit("a", 6, true, 4), 2).make()));
    // Three of six lost: one of each two. Left 1 hot, 1 cold, 1 unsaid, and 1 nailed on hot.
    assertEquals(new LostShoes.Tally(2 + 2, 1 + 1), lost.hot());
    assertEquals(new LostShoes.Tally(2 + 1, 1 + 0.5), lost.cold());
    assertEquals(2.0 / 4 - 1.5 / 3, lost.difference().orElseThrow(), 1e-12);
    assertEquals(1, lost.horsesHot());
    assertEquals(1, lost.horsesCold());
  }

  @Test
  void horses_are_counted_by_the_methods_that_they_wore() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (String horse : List.of("a", "b", "c")) {
      boolean hot = !horse.equals("c");
      jobs.add(visit(horse, 0, hot, 4).make());
      jobs.add(visit(horse, 6, hot, 4).make());
    }
    LostShoes lost = all(jobs);
    assertEquals(2, lost.horsesHot());
    assertEquals(1, lost.horsesCold());
    assertEquals(0.0, lost.difference().orElseThrow());
  }

  /** The two lost shoes are said beside the call: the call itself says none. */
  @Test
  void a_loss_said_in_one_row_of_the_day_is_all_that_was_lost() {
    JobMaker call = visit("a", 2, true, 1);
    call.reason = Reason.LOST_SHOE;
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 4).make(),
                call.make(),
                finding(visit("a", 2, true, 1).row(9), 2).make()));
    assertEquals(new LostShoes.Tally(4, 2), lost.hot());
  }

  /** A trim on the day of the call nailed nothing on. */
  @Test
  void only_the_calls_own_row_says_how_many_were_nailed_back_on() {
    JobMaker call = visit("a", 2, true, 1);
    call.reason = Reason.LOST_SHOE;
    LostShoes lost =
        all(
            List.of(
                visit("a", 0, true, 4).make(), call.make(), visit("a", 2, true, 3).row(9).make()));
    assertEquals(new LostShoes.Tally(4, 1), lost.hot());
  }

  @Test
  void the_wider_interval_decides() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int horse = 0; horse < 8; horse++) {
      boolean hot = horse % 2 == 0;
      jobs.add(visit("h" + horse, 0, hot, 4).make());
      jobs.add(finding(visit("h" + horse, 6, hot, 4), hot ? 0 : 4).make());
    }
    LostShoes lost = all(jobs);
    assertEquals(-1.0, lost.difference().orElseThrow());
    assertEquals(lost.plain(), lost.wider(), "no horse differs from another");
    assertEquals(Verdict.A_LOWER, lost.verdict());
    assertEquals(Optional.empty(), new LostShoes.Tally(0, 0).share());
  }

  /** Hot horses lost 0, 0, 1 of 4 each, cold ones 1, 0, 2: each left out in turn. */
  private static double byHand() {
    double hot = 1 / 12.0;
    double cold = 3 / 12.0;
    double[] without = {
      1 / 8.0 - cold, 1 / 8.0 - cold, 0 - cold, hot - 2 / 8.0, hot - 3 / 8.0, hot - 1 / 8.0
    };
    double mean = 0;
    for (double each : without) {
      mean += each / 6;
    }
    double squares = 0;
    for (double each : without) {
      squares += (each - mean) * (each - mean);
    }
    return 2 * StudentT.quantile(4) * Math.sqrt(squares * 5 / 6);
  }
}
