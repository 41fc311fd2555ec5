package clenchbook.comparison.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.MaterialKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.comparison.JobMaker;
import clenchbook.comparison.questions.Comparison.Agreement;
import clenchbook.statistics.EffectsModel;
import clenchbook.statistics.Interval;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which jobs enter a comparison and what it makes of them; means and differences on paper. */
class ComparisonTest {
  private static final Measure SHAPE = Measure.SHAPE_MINUTES_PER_SHOE;

  private int row = 2;

  private ComparedJob hot(String horse, String shape) {
    return JobMaker.job().row(row++).horse(horse).hot(shape).make();
  }

  private ComparedJob cold(String horse, String shape) {
    return JobMaker.job().row(row++).horse(horse).cold(shape).make();
  }

  private static Comparison compare(Measure measure, List<ComparedJob> jobs) {
    Question question = Question.HOT_WITH_COLD;
    return Comparison.of(question, measure, SortedJob.of(question, jobs), JobMaker.rates());
  }

  /** Hot 20, 24, 28 over four shoes: 5, 6, 7 a shoe; cold 32, 36: 8, 9. */
  private List<ComparedJob> five() {
    return new ArrayList<>(
        List.of(hot("a", "20"), hot("b", "24"), hot("c", "28"), cold("d", "32"), cold("e", "36")));
  }

  @Test
  void means_and_their_difference_are_those_of_the_jobs() {
    Comparison five = compare(SHAPE, five());
    assertEquals(5, five.jobs());
    assertEquals(Map.of(), five.leftOut());
    assertEquals(6.0, five.estimate().orElseThrow().meanA(), 1e-12);
    assertEquals(8.5, five.estimate().orElseThrow().meanB(), 1e-12);
    assertEquals(-2.5, five.estimate().orElseThrow().difference(), 1e-12);
    assertEquals(
        List.of(5.0, 6.0, 7.0, 8.0, 9.0),
        five.used().stream().map(Comparison.Entry::value).toList());
    assertEquals(Map.of("full set, keg, 4 shoes", 8.5), five.meansOfB());
    assertEquals(Map.of("full set, keg, 4 shoes", "Full set, keg, 4 shoes"), five.names());
    assertEquals(
        List.of("a", "b", "c", "d", "e"),
        five.usedObservations().stream().map(each -> each.group()).toList());
  }

  @Test
  void job_minutes_are_the_jobs_own() {
    Comparison five = compare(Measure.JOB_MINUTES, five());
    assertEquals(70.0, five.estimate().orElseThrow().meanA(), 1e-12);
  }

  @Test
  void a_job_is_left_out_for_the_first_reason_that_applies() {
    JobMaker bare = JobMaker.job();
    bare.shoes = 0;
    JobMaker light = JobMaker.job();
    light.kind = Optional.of(MaterialKind.ALUMINIUM);
    JobMaker unshaped = JobMaker.job();
    unshaped.shaping = Optional.empty();
    JobMaker unsaid = JobMaker.job();
    unsaid.shaping = Optional.of(Shaping.NONE);
    JobMaker unmeasured = JobMaker.job();
    unmeasured.shape = "";
    JobMaker alone = JobMaker.job();
    alone.work = "Fronts";
    List<ComparedJob> jobs = five();
    List.of(bare, light, unshaped, unsaid, unmeasured, alone)
        .forEach(job -> jobs.add(job.row(row++).make()));
    Comparison all = compare(SHAPE, jobs);
    assertEquals(11, all.jobs());
    assertEquals(
        Map.of(
            Exclusion.NO_SHOES, 1,
            Exclusion.ALUMINIUM, 1,
            Exclusion.NOT_SHAPED, 2,
            Exclusion.SHAPE_NOT_MEASURED, 1,
            Exclusion.NO_COUNTERPART, 1),
        all.leftOut());
    assertEquals(6, all.entered().size(), "one of them without a counterpart");
    assertEquals(5, all.used().size());
    assertEquals(1, all.meansOfB().size());
  }

  @Test
  void nothing_in_common_gives_no_estimate_and_no_verdict() {
    Comparison one = compare(SHAPE, List.of(hot("a", "20"), hot("b", "24")));
    assertTrue(one.estimate().isEmpty());
    assertEquals(List.of(), one.used());
    assertEquals(Map.of(), one.meansOfB());
    assertEquals(Map.of(Exclusion.NO_COUNTERPART, 2), one.leftOut());
    assertEquals(Verdict.NOT_ENOUGH_JOBS, one.verdict());
    assertEquals(false, one.enough());
    assertEquals(Agreement.NOT_TRIED, one.agreement());
    assertTrue(one.wider().isEmpty());
  }

  private Comparison clear(int perSide) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < perSide; i++) {
      jobs.add(hot("h" + i, String.valueOf(20 + i % 3)));
      jobs.add(cold("h" + i, String.valueOf(30 + (i + 1) % 3)));
    }
    return compare(SHAPE, jobs);
  }

  @Test
  void five_on_each_side_are_enough() {
    assertEquals(Verdict.NOT_ENOUGH_JOBS, clear(4).verdict());
    assertEquals(Verdict.A_LOWER, clear(5).verdict());
    assertEquals(true, clear(5).enough());
    assertTrue(clear(5).wider().orElseThrow().high() < 0);
  }

  /** The guard in place of the real one: its difference, and its interval where there is one. */
  private Agreement agreement(double difference, Optional<Interval> interval) {
    Comparison found = clear(5);
    Optional<EffectsModel.Answer> guard =
        Optional.of(new EffectsModel.Answer(difference, interval, 3));
    return new Comparison(
            found.question(),
            found.measure(),
            found.jobs(),
            found.leftOut(),
            found.entered(),
            found.estimate(),
            guard)
        .agreement();
  }

  /** Hot is 2.5 minutes less; its interval lies somewhere about -2.5. */
  @Test
  void a_guard_agrees_says_the_opposite_or_lies_apart() {
    assertEquals(Agreement.AGREE, clear(5).agreement());
    assertEquals(Agreement.AGREE, agreement(-2.0, Optional.of(new Interval(-4, 0))));
    assertEquals(Agreement.AGREE, agreement(-2.0, Optional.empty()));
    assertEquals(Agreement.OTHER_SIGN, agreement(2.0, Optional.of(new Interval(-4, 8))));
    assertEquals(Agreement.INTERVALS_PART, agreement(-90.0, Optional.of(new Interval(-91, -89))));
  }

  @ParameterizedTest
  @CsvSource({
    "5, 5, -2, -1, a lower",
    "5, 5, 1, 2, a higher",
    "5, 5, -1, 1, no difference shown",
    "5, 5, 0, 1, no difference shown",
    "5, 5, -1, 0, no difference shown",
    "4, 5, 1, 2, not enough jobs",
    "5, 4, 1, 2, not enough jobs"
  })
  void a_verdict_needs_five_on_each_side_and_an_interval_without_zero(
      double countA, double countB, double low, double high, String verdict) {
    assertEquals(verdict, Verdict.of(countA, countB, Optional.of(new Interval(low, high))).word());
  }

  @Test
  void without_an_interval_no_difference_is_shown() {
    assertEquals(Verdict.NO_DIFFERENCE_SHOWN, Verdict.of(9, 9, Optional.empty()));
  }

  @Test
  void each_month_has_its_own_counts_means_and_difference() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (String day : List.of("2025-01-31", "2025-03-01", "2025-03-31")) {
      LocalDate date = LocalDate.parse(day);
      jobs.add(JobMaker.job().row(row++).horse("a" + day).on(date).hot("20").make());
      jobs.add(JobMaker.job().row(row++).horse("b" + day).on(date).cold("32").make());
    }
    jobs.add(JobMaker.job().row(row++).horse("z").on(LocalDate.of(2025, 3, 2)).hot("32").make());
    List<Trend> trends =
        Trend.of(
            List.of(compare(SHAPE, jobs)), LocalDate.of(2025, 1, 15), LocalDate.of(2025, 3, 31));
    assertEquals(
        List.of(YearMonth.of(2025, 1), YearMonth.of(2025, 2), YearMonth.of(2025, 3)),
        trends.stream().map(Trend::month).toList());
    assertEquals(1, trends.get(0).countA());
    assertEquals(OptionalDouble.empty(), trends.get(0).difference(), "one on each side");
    assertEquals(OptionalDouble.empty(), trends.get(1).meanA());
    assertEquals(3, trends.get(2).countA());
    assertEquals(2, trends.get(2).countB());
    // 5, 5 and 8 a shoe against 8 and 8.
    assertEquals(6.0, trends.get(2).meanA().orElseThrow(), 1e-12);
    assertEquals(8.0, trends.get(2).meanB().orElseThrow(), 1e-12);
    assertEquals(-2.0, trends.get(2).difference().orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(Exclusion.class)
  void every_reason_has_its_words(Exclusion reason) {
    assertEquals(false, reason.words().isBlank());
  }

  /** The names that files bear, as the contract of the outputs gives them. */
  @Test
  void questions_and_measures_have_the_names_of_the_files() {
    assertEquals(
        List.of("shape minutes per shoe", "job minutes", "cost per job", "earned per hour"),
        List.of(Measure.values()).stream().map(Measure::title).toList());
    assertEquals("hot with cold", Question.HOT_WITH_COLD.title());
    assertEquals("hot", Question.HOT_WITH_COLD.nameA());
    assertEquals("cold", Question.HOT_WITH_COLD.nameB());
    assertEquals("handmade with keg", Question.HANDMADE_WITH_KEG.title());
  }

  @Test
  void a_fee_and_a_cancelled_visit_were_not_done() {
    JobMaker fee = JobMaker.job();
    fee.fee = true;
    JobMaker cancelled = JobMaker.job();
    cancelled.reason = Reason.CANCELLED;
    assertEquals(true, JobMaker.job().make().done());
    assertEquals(false, fee.make().done());
    assertEquals(false, cancelled.make().done());
  }

  @Test
  void handmade_with_keg_needs_a_shaping_and_new_shoes_and_takes_both_as_an_effect() {
    Question made = Question.HANDMADE_WITH_KEG;
    JobMaker unshaped = JobMaker.job();
    unshaped.shaping = Optional.empty();
    assertEquals(Optional.of(Exclusion.NOT_SHAPED), made.exclusion(unshaped.make()));
    JobMaker more = JobMaker.job();
    more.newShoes = 5;
    assertEquals(Optional.empty(), made.exclusion(more.make()));
    assertEquals("4 shoes, hot", made.effectName(JobMaker.job().make()));
    JobMaker helped = JobMaker.job();
    helped.helper = "10";
    assertEquals("4 shoes, hot, with a helper", made.effectName(helped.make()));
    assertEquals("full set", Question.HOT_WITH_COLD.effectName(JobMaker.job().make()));
  }

  @Test
  void jobs_that_enter_share_the_names_of_their_stratum_and_others_have_none() {
    JobMaker bare = JobMaker.job();
    bare.shoes = 0;
    List<SortedJob> sorted =
        SortedJob.of(Question.HOT_WITH_COLD, List.of(hot("a", "20"), cold("b", "30"), bare.make()));
    assertEquals("full set, keg, 4 shoes", sorted.get(0).stratum());
    assertTrue(sorted.get(0).stratum() == sorted.get(1).stratum(), "one text in memory");
    assertTrue(sorted.get(0).effect() == sorted.get(1).effect());
    assertEquals("", sorted.get(2).stratum());
    assertEquals(Optional.of(Exclusion.NO_SHOES), sorted.get(2).exclusion());
  }
}
