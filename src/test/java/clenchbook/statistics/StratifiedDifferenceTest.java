package clenchbook.statistics;

import static clenchbook.statistics.PublishedSamples.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.inference.DataDispersion;
import org.apache.commons.statistics.inference.TTest;
import org.junit.jupiter.api.Test;

class StratifiedDifferenceTest {

  private static StratifiedEstimate estimate(List<Observation> observations) {
    return StratifiedDifference.estimate(observations).orElseThrow();
  }

  private static double t(StratifiedEstimate estimate) {
    return estimate.difference() / Math.sqrt(estimate.variance());
  }

  /** Student 1908; R documentation of t.test prints -3.365483 to 0.205483, df 17.776. */
  @Test
  void one_stratum_gives_welch_on_students_sleep_data() {
    StratifiedEstimate sleep =
        estimate(pair("sleep", PublishedSamples.SLEEP_1, PublishedSamples.SLEEP_2));
    assertEquals(-1.58, sleep.difference(), 1e-12);
    assertEquals(-1.8608, t(sleep), 5e-5);
    assertEquals(17.776, sleep.degreesOfFreedom(), 5e-4);
    assertEquals(-3.365483, sleep.plain().orElseThrow().low(), 5e-7);
    assertEquals(0.205483, sleep.plain().orElseThrow().high(), 5e-7);
    assertEquals(sleep.plain(), sleep.strata().get(0).plain());
  }

  /** Wikipedia, "Welch's t-test", examples 1 and 2; from memory. */
  @Test
  void one_stratum_gives_the_published_welch_examples() {
    StratifiedEstimate first =
        estimate(pair("one", PublishedSamples.WELCH_1A, PublishedSamples.WELCH_1B));
    assertEquals(-2.4554, t(first), 5e-5);
    assertEquals(24.99, first.degreesOfFreedom(), 5e-3);
    StratifiedEstimate second =
        estimate(pair("two", PublishedSamples.WELCH_2A, PublishedSamples.WELCH_2B));
    assertEquals(-1.5654, t(second), 5e-5);
    assertEquals(9.905, second.degreesOfFreedom(), 5e-4);
  }

  /**
   * Three strata: R's two-way analysis of variance of ToothGrowth prints F = 15.572 for the
   * supplement (sum of squares 205.4, 54 residual degrees of freedom) and a difference of 3.7. With
   * equal counts the stratified t squared is that F.
   */
  @Test
  void three_strata_give_the_published_two_way_analysis() {
    StratifiedEstimate teeth = estimate(PublishedSamples.teeth());
    assertEquals(3.7, teeth.difference(), 1e-12);
    assertEquals(15.572, t(teeth) * t(teeth), 5e-4);
    assertTrue(teeth.degreesOfFreedom() < 54 && teeth.degreesOfFreedom() > 40);
    double weights = teeth.strata().stream().mapToDouble(StratumEstimate::weight).sum();
    assertEquals(205.35, teeth.difference() * teeth.difference() * weights, 1e-9);
  }

  /**
   * R's data set ToothGrowth (C. I. Bliss, The Statistics of Bioassay, 1952) under t.test(len ~
   * supp) for the doses 0.5, 1 and 2, as the course project "Statistical Inference" of the Data
   * Science Specialization prints them: three reports seen that print all three intervals.
   */
  @Test
  void each_stratum_stands_with_its_own_welch_interval() {
    double[][] published = {{1.719057, 8.780943}, {2.802148, 9.057852}, {-3.798070, 3.638070}};
    List<StratumEstimate> doses = estimate(PublishedSamples.teeth()).strata();
    for (int dose = 0; dose < published.length; dose++) {
      Interval interval = doses.get(dose).plain().orElseThrow();
      assertEquals(published[dose][0], interval.low(), 5e-7);
      assertEquals(published[dose][1], interval.high(), 5e-7);
    }
  }

  /** Welch from a reference library: Apache Commons Statistics Inference 1.2. */
  @Test
  void agrees_with_a_reference_library_on_random_samples() {
    Random random = new Random(20260131);
    for (int round = 0; round < 200; round++) {
      double[] a = random.doubles(2 + random.nextInt(30), 3, 12).toArray();
      double[] b = random.doubles(2 + random.nextInt(30), 4, 11).toArray();
      StratifiedEstimate own = estimate(pair("x", a, b));
      TTest.Result library = TTest.withDefaults().with(DataDispersion.HETEROSCEDASTIC).test(a, b);
      assertEquals(library.getStatistic(), t(own), 1e-9 * Math.abs(t(own)) + 1e-12);
      assertEquals(library.getDegreesOfFreedom(), own.degreesOfFreedom(), 1e-9 * 60);
      assertEquals(library.getPValue() > 0.05, own.plain().orElseThrow().holds(0));
    }
  }

  /** With an effect for each stratum least squares gives the same weights. */
  @Test
  void unequal_strata_are_weighted_as_least_squares_weights_them() {
    List<Observation> observations = unequal(7);
    List<double[]> columns = new ArrayList<>();
    for (String stratum : List.of("p", "q", "r")) {
      columns.add(column(observations, stratum));
    }
    columns.add(observations.stream().mapToDouble(each -> each.side() == Side.A ? 1 : 0).toArray());
    double[] y = observations.stream().mapToDouble(Observation::value).toArray();
    double coefficient = LeastSquares.fit(columns, y).coefficients().get(3).getAsDouble();
    assertEquals(coefficient, estimate(observations).difference(), 1e-10);
  }

  private static double[] column(List<Observation> observations, String stratum) {
    return observations.stream()
        .mapToDouble(each -> each.stratum().equals(stratum) ? 1 : 0)
        .toArray();
  }

  static List<Observation> unequal(long seed) {
    Random random = new Random(seed);
    List<Observation> observations = new ArrayList<>();
    observations.addAll(pair("p", draw(random, 3, 5), draw(random, 9, 7)));
    observations.addAll(pair("q", draw(random, 12, 8), draw(random, 4, 9)));
    observations.addAll(pair("r", draw(random, 2, 3), draw(random, 2, 4)));
    return observations;
  }

  private static double[] draw(Random random, int count, double mean) {
    return random.doubles(count, mean - 2, mean + 2).toArray();
  }

  @Test
  void the_order_of_the_values_changes_nothing() {
    List<Observation> observations = new ArrayList<>(unequal(11));
    StratifiedEstimate sorted = estimate(observations);
    Collections.shuffle(observations, new Random(5));
    StratifiedEstimate shuffled = estimate(observations);
    assertEquals(sorted.difference(), shuffled.difference());
    assertEquals(sorted.plain(), shuffled.plain());
  }

  @Test
  void a_stratum_with_one_value_on_a_side_is_not_used() {
    List<Observation> observations = new ArrayList<>(PublishedSamples.teeth());
    observations.addAll(pair("thin", new double[] {1000}, new double[] {1, 2, 3}));
    assertEquals(3, estimate(observations).strata().size());
    assertEquals(3.7, estimate(observations).difference(), 1e-12);
    assertTrue(
        StratifiedDifference.estimate(pair("thin", new double[] {1}, new double[] {1, 2}))
            .isEmpty());
    assertTrue(StratifiedDifference.estimate(List.of()).isEmpty());
  }

  @Test
  void without_variance_there_is_a_difference_but_no_interval() {
    StratifiedEstimate still =
        estimate(pair("x", new double[] {0.1, 0.1, 0.1}, new double[] {0.3, 0.3, 0.3}));
    assertEquals(-0.2, still.difference(), 1e-15);
    assertTrue(still.plain().isEmpty());
    assertTrue(still.leaveOneOut().isEmpty());
  }

  @Test
  void variance_on_one_side_only_gives_that_sides_degrees_of_freedom() {
    StratifiedEstimate half =
        estimate(pair("x", new double[] {1, 2, 3, 4}, new double[] {5, 5, 5}));
    assertEquals(3, half.degreesOfFreedom(), 1e-12);
  }
}
