package clenchbook.comparison.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import clenchbook.book.MaterialKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.comparison.JobMaker;
import clenchbook.statistics.Side;
import clenchbook.texts.InEnglish;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class QuestionTest {
  private static final Question HOT = Question.HOT_WITH_COLD;
  private static final Question MADE = Question.HANDMADE_WITH_KEG;

  @Test
  void an_aluminium_shoe_never_enters_hot_with_cold() {
    JobMaker cold = JobMaker.job().cold("30");
    cold.kind = Optional.of(MaterialKind.ALUMINIUM);
    assertEquals(Optional.of(Exclusion.ALUMINIUM), HOT.exclusion(cold.make()));
    assertEquals(Optional.of(Exclusion.ALUMINIUM), HOT.exclusion(cold.hot("20").make()));
    assertEquals(Optional.of(Exclusion.ALUMINIUM), MADE.exclusion(cold.make()));
  }

  @Test
  void shoes_of_two_kinds_enter_no_comparison() {
    ComparedJob one = JobMaker.job().make();
    ComparedJob mixed =
        new ComparedJob(
            one.source(),
            one.date(),
            one.horse(),
            one.horseName(),
            one.stop(),
            one.owner(),
            one.work(),
            one.compareAs(),
            false,
            one.reason(),
            one.shaping(),
            List.of(
                new ShoeCount(Optional.of(MaterialKind.KEG), 2),
                new ShoeCount(Optional.of(MaterialKind.HANDMADE), 2)),
            4,
            4,
            one.lost(),
            one.time(),
            one.money());
    assertEquals(Optional.of(Exclusion.MIXED_KINDS), HOT.exclusion(mixed));
    assertEquals(Optional.of(Exclusion.MIXED_KINDS), MADE.exclusion(mixed));
  }

  @Test
  void a_trim_enters_no_comparison() {
    JobMaker trim = JobMaker.job();
    trim.shoes = 0;
    trim.shaping = Optional.of(Shaping.NONE);
    assertEquals(Optional.of(Exclusion.NO_SHOES), HOT.exclusion(trim.make()));
    assertEquals(Optional.of(Exclusion.NO_SHOES), MADE.exclusion(trim.make()));
  }

  @Test
  void lost_shoe_calls_and_reset_shoes_enter_hot_with_cold_only() {
    JobMaker call = JobMaker.job();
    call.reason = Reason.LOST_SHOE;
    assertEquals(Optional.empty(), HOT.exclusion(call.make()));
    assertEquals(Optional.of(Exclusion.LOST_SHOE_CALL), MADE.exclusion(call.make()));
    JobMaker reset = JobMaker.job();
    reset.newShoes = 2;
    assertEquals(Optional.empty(), HOT.exclusion(reset.make()));
    assertEquals(Optional.of(Exclusion.RESET), MADE.exclusion(reset.make()));
  }

  @Test
  void shoes_of_unknown_kind_are_a_kind_to_hot_with_cold_and_unknown_to_the_other() {
    JobMaker unknown = JobMaker.job();
    unknown.kind = Optional.empty();
    assertEquals(Optional.empty(), HOT.exclusion(unknown.make()));
    assertEquals("full set, kind not given, 4 shoes", HOT.stratum(unknown.make()));
    assertEquals(Optional.of(Exclusion.KIND_UNKNOWN), MADE.exclusion(unknown.make()));
  }

  @Test
  void a_stratum_of_hot_with_cold_is_work_kind_and_number_of_shoes() {
    JobMaker job = JobMaker.job();
    assertEquals("Full set, keg, 4 shoes", HOT.stratumName(job.make()));
    job.compareAs = "All round";
    assertEquals("All round, keg, 4 shoes", HOT.stratumName(job.make()));
    job.shoes = 2;
    assertEquals("All round, keg, 2 shoes", HOT.stratumName(job.make()));
    job.kind = Optional.of(MaterialKind.HANDMADE);
    assertEquals("All round, handmade, 2 shoes", HOT.stratumName(job.make()));
  }

  @Test
  void a_stratum_of_handmade_with_keg_is_number_of_shoes_or_compare_as_and_shaping() {
    JobMaker job = JobMaker.job();
    assertEquals("4 shoes, hot", MADE.stratumName(job.make()));
    job.compareAs = "All round";
    assertEquals("All round, hot", MADE.stratumName(job.make()));
    assertEquals("All round, cold", MADE.stratumName(job.cold("30").make()));
  }

  @Test
  void people_read_in_english_what_files_have() {
    for (Question question : Question.values()) {
      assertEquals(question.title(), InEnglish.said(question.told()));
    }
    for (Measure measure : Measure.values()) {
      assertEquals(measure.title(), InEnglish.said(measure.told()));
    }
    for (Way way : Way.values()) {
      assertEquals(way.word(), InEnglish.said(way.told()));
    }
    for (Exclusion exclusion : Exclusion.values()) {
      assertEquals(exclusion.words(), InEnglish.said(exclusion.told()));
    }
  }

  @Test
  void people_read_a_sort_of_job_in_english_as_files_have_it() {
    JobMaker job = JobMaker.job();
    assertSortIsStratum(job);
    job.helper = "15";
    job.shoes = 1;
    assertSortIsStratum(job);
    job.cold("30").kind = Optional.of(MaterialKind.HANDMADE);
    assertSortIsStratum(job);
    job.kind = Optional.empty();
    job.compareAs = "All round";
    assertSortIsStratum(job);
  }

  private static void assertSortIsStratum(JobMaker job) {
    assertEquals(HOT.stratumName(job.make()), InEnglish.said(HOT.sort(job.make())));
    assertEquals(MADE.stratumName(job.make()), InEnglish.said(MADE.sort(job.make())));
  }

  @Test
  void jobs_with_a_helper_are_strata_of_their_own() {
    JobMaker job = JobMaker.job();
    String alone = HOT.stratum(job.make());
    job.helper = "15";
    assertNotEquals(alone, HOT.stratum(job.make()));
    assertNotEquals(HOT.effectName(JobMaker.job().make()), HOT.effectName(job.make()));
  }

  @Test
  void names_that_differ_in_case_are_one_stratum() {
    JobMaker other = JobMaker.job();
    other.work = "FULL SET";
    assertEquals(HOT.stratum(JobMaker.job().make()), HOT.stratum(other.make()));
  }

  @Test
  void hot_and_handmade_are_side_a() {
    JobMaker job = JobMaker.job();
    assertEquals(Side.A, HOT.side(job.make()));
    assertEquals(Side.B, MADE.side(job.make()));
    job.cold("30").kind = Optional.of(MaterialKind.HANDMADE);
    assertEquals(Side.B, HOT.side(job.make()));
    assertEquals(Side.A, MADE.side(job.make()));
  }

  @Test
  void shape_minutes_need_their_own_cell_and_nothing_else() {
    JobMaker job = JobMaker.job().hot("22");
    job.measured = false;
    assertEquals(
        5.5, Measure.SHAPE_MINUTES_PER_SHOE.value(job.make(), JobMaker.rates()).getAsDouble());
    job.shape = "";
    assertEquals(
        Optional.of(Exclusion.SHAPE_NOT_MEASURED),
        Measure.SHAPE_MINUTES_PER_SHOE.missing(job.make()));
  }

  @Test
  void the_other_measures_need_a_measured_job() {
    JobMaker job = JobMaker.job();
    job.measured = false;
    for (Measure measure :
        List.of(Measure.JOB_MINUTES, Measure.COST_PER_JOB, Measure.EARNED_PER_HOUR)) {
      assertEquals(Optional.of(Exclusion.NOT_MEASURED), measure.missing(job.make()));
    }
  }

  /** 24 + 1 + 2 and (70 + 60) minutes at 30 and 20 at 15 an hour: 27 + 65 + 5. */
  @Test
  void cost_per_job_holds_making_and_helper_but_no_travel_and_no_overhead() {
    JobMaker job = JobMaker.job();
    job.making = "60";
    job.helper = "20";
    assertEquals(97.0, Measure.COST_PER_JOB.value(job.make(), JobMaker.rates()).getAsDouble());
  }

  /** 120 − 24 − 1 − 2 − 6 − 8 = 79 in 70 + 10 + 40 minutes. */
  @Test
  void earned_per_hour_counts_drive_and_making() {
    JobMaker job = JobMaker.job();
    job.making = "40";
    assertEquals(39.5, Measure.EARNED_PER_HOUR.value(job.make(), JobMaker.rates()).getAsDouble());
  }

  @Test
  void a_job_without_any_minutes_earns_nothing_by_the_hour() {
    JobMaker job = JobMaker.job();
    job.jobMinutes = "0";
    job.drive = "0";
    assertEquals(Optional.of(Exclusion.NOT_MEASURED), Measure.EARNED_PER_HOUR.missing(job.make()));
  }

  @Test
  void minutes_that_no_day_holds_enter_no_comparison() {
    JobMaker slip = JobMaker.job().hot("2400");
    slip.jobMinutes = "6500";
    for (Measure measure : Measure.values()) {
      assertEquals(Optional.of(Exclusion.IMPOSSIBLE_MINUTES), measure.missing(slip.make()));
    }
    slip.jobMinutes = "1440";
    slip.shape = "1440";
    for (Measure measure : Measure.values()) {
      assertEquals(Optional.empty(), measure.missing(slip.make()));
    }
  }
}
