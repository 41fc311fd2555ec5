package clenchbook.comparison.breakeven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.MaterialKind;
import clenchbook.comparison.Comparisons;
import clenchbook.comparison.JobMaker;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /**
   * OpenStax, Principles of Accounting, Volume 2: Managerial Accounting (2019), section 3.2, Hicks
   * Manufacturing: fixed costs 18,000, price 100, variable cost 20, so 225 units (the 225 seen
   * quoted, the rest from memory). The second row: the same book's fixed costs 20,000, price 400,
   * variable cost 250 (seen in Penn State's copy, ACCTG 211, section 7.2), 20,000 / 150. Here the
   * fixed cost is the set-up, a thousandth of it; what a shoe saves in wages is the price and its
   * gas the variable cost, a thousandth too.
   */
  @ParameterizedTest(name = "fixed {0}, price {1}, variable {2}: {3} units")
  @CsvSource({"18, 0.10, 0.02, 225", "20, 0.40, 0.25, 133.3333333"})
  void a_published_cost_and_volume_example_breaks_even_where_its_book_says(
      double fixed, double price, double variable, double units) {
    double wage = JobMaker.rates().wagePerMinute();
    double gas = JobMaker.rates().gasPerMinute().orElseThrow().doubleValue();
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      JobMaker hot = JobMaker.job().horse("hot " + i).row(2 + 2 * i).hot("24");
      hot.forge = BigDecimal.valueOf(4 * variable / gas).toPlainString();
      jobs.add(hot.make());
      String slower = BigDecimal.valueOf(24 + 4 * price / wage).toPlainString();
      jobs.add(JobMaker.job().horse("cold " + i).row(3 + 2 * i).cold(slower).make());
    }
    CompareRates rates = JobMaker.rates(BigDecimal.valueOf(fixed / wage), BigDecimal.ZERO);
    Comparisons all = Comparisons.of(jobs, JobMaker.FIRST, JobMaker.LAST, rates);
    assertEquals(
        units, all.breakEven(BreakEven.SHOES_PER_STOP).value().getAsDouble(), units * 1e-6);
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
