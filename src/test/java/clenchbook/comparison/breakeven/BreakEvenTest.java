package clenchbook.comparison.breakeven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.MaterialKind;
import clenchbook.comparison.Comparisons;
import clenchbook.comparison.JobMaker;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

public class BreakEvenTest {

  private static Comparisons compare(List<ComparedJob> jobs) {
    return Comparisons.of(jobs, JobMaker.FIRST, JobMaker.LAST, JobMaker.rates());
  }

  /** Hot takes {@code hot} minutes a set of four, cold {@code cold}, give or take. */
  private static List<ComparedJob> sets(int hot, int cold) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      String more = i % 2 == 0 ? ".0" : ".8";
      jobs.add(JobMaker.job().horse("hot " + i).row(2 + 2 * i).hot(hot + more).make());
      jobs.add(JobMaker.job().horse("cold " + i).row(3 + 2 * i).cold(cold + more).make());
    }
    return jobs;
  }

  /**
   * Set-up: 6 min at 30 an hour and 5 min of gas at 0.04: 3.20. A hot shoe saves (32 − 24)/4 = 2
   * min, that is 1.00, less 5 min of gas, 0.20: 0.80. 3.20 / 0.80 = 4 shoes.
   */
  @Test
  void lighting_the_forge_pays_from_set_up_cost_over_gain_a_shoe() {
    BreakEven figure = compare(sets(24, 32)).breakEven(BreakEven.SHOES_PER_STOP);
    assertEquals(4.0, figure.value().getAsDouble(), 1e-9);
    assertTrue(figure.interval().orElseThrow().holds(4.0));
    ForgeBreakEven.CurvePoint eighth = compare(sets(24, 32)).curve().get(7);
    assertEquals(8 * 0.8 - 3.2, eighth.gain(), 1e-9);
  }

  @Test
  void it_never_pays_where_a_hot_shoe_saves_less_than_its_gas() {
    Comparisons never = compare(sets(32, 32));
    assertTrue(never.breakEven(BreakEven.SHOES_PER_STOP).never());
    assertEquals("never", table(never, "break-even", 0, "value"));
  }

  @Test
  void too_few_jobs_give_no_number() {
    Comparisons thin = compare(sets(24, 32).subList(0, 6));
    BreakEven figure = thin.breakEven(BreakEven.SHOES_PER_STOP);
    assertTrue(figure.value().isEmpty());
    assertEquals("not enough jobs", figure.basis());
    assertTrue(thin.curve().isEmpty());
    assertTrue(thin.sensitivities().isEmpty());
  }

  public static String table(Comparisons all, String name, int row, String column) {
    return all.tables().stream()
        .filter(table -> table.name().equals(name))
        .map(table -> table.rows().get(row).get(table.columns().indexOf(column)))
        .findFirst()
        .orElseThrow();
  }

  /** Keg and handmade sets in one stratum; handmade takes 60 min of making. */
  private static List<ComparedJob> made(String charged) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      JobMaker keg = JobMaker.job().horse("keg " + i).row(2 + 2 * i);
      keg.jobMinutes = String.valueOf(68 + i % 3 * 2);
      jobs.add(keg.make());
      JobMaker hand = JobMaker.job().horse("hand " + i).row(3 + 2 * i);
      hand.kind = Optional.of(MaterialKind.HANDMADE);
      hand.jobMinutes = String.valueOf(68 + i % 3 * 2);
      hand.making = "60";
      hand.charged = charged;
      jobs.add(hand.make());
    }
    return jobs;
  }

  @Test
  void at_the_extra_price_handmade_earns_what_keg_earns() {
    double extra = compare(made("140")).breakEven(BreakEven.EXTRA_PRICE).value().getAsDouble();
    assertTrue(extra > 0);
    String dearer = String.valueOf(140 + extra);
    Comparisons then = compare(made(dearer));
    Comparison earned = then.comparison(Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR);
    assertEquals(0, earned.estimate().orElseThrow().difference(), 1e-6);
  }

  @Test
  void at_the_making_minutes_handmade_earns_what_keg_earns() {
    double minutes = compare(made("140")).breakEven(BreakEven.MAKING_MINUTES).value().getAsDouble();
    assertTrue(minutes < 15);
    List<ComparedJob> faster = new ArrayList<>();
    for (ComparedJob job : made("140")) {
      faster.add(job.has(MaterialKind.KEG) ? job : takes(job, 4 * minutes));
    }
    double gap =
        compare(faster)
            .comparison(Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR)
            .estimate()
            .orElseThrow()
            .difference();
    assertEquals(0, gap, 1e-5);
  }

  /** The job with other making minutes, and the overhead that they bear at the same rate. */
  private static ComparedJob takes(ComparedJob job, double making) {
    JobMaker other = JobMaker.job().horse(job.horse()).row(job.source().row());
    other.kind = Optional.of(MaterialKind.HANDMADE);
    other.jobMinutes = job.time().job().toString();
    other.making = String.valueOf(making);
    other.charged = "140";
    double before = job.time().all().doubleValue();
    double after = before - 60 + making;
    other.overhead = String.valueOf(8 * after / before);
    return other.make();
  }

  @Test
  void a_price_that_not_even_instant_making_saves_is_never() {
    Comparisons cheap = compare(made("60"));
    assertTrue(cheap.breakEven(BreakEven.MAKING_MINUTES).never());
    assertTrue(cheap.breakEven(BreakEven.EXTRA_PRICE).value().getAsDouble() > 60);
  }

  @Test
  void a_fifth_moves_what_it_touches_and_nothing_else() {
    Comparisons all = compare(sets(24, 32));
    for (Sensitivity each : all.sensitivities()) {
      boolean touches = !each.input().equals("steel") && !each.input().equals("price");
      assertEquals(touches, Math.abs(each.change().orElse(1)) > 1e-9, each.toString());
    }
    assertFalse(all.sensitivities().isEmpty());
  }

  /** The same figures in each run: fixed seed, horses in the order of their first jobs. */
  @Test
  void the_same_book_gives_the_same_bytes() {
    assertEquals(
        compare(JobMaker.book(5)).tables().toString(),
        compare(JobMaker.book(5)).tables().toString());
    assertEquals(compare(JobMaker.book(5)).report("x"), compare(JobMaker.book(5)).report("x"));
  }
}
