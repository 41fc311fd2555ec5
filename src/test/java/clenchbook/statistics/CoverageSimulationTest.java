package clenchbook.statistics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Books with a known truth: side A takes 3.0 less than side B. How often do the intervals hold it?
 */
class CoverageSimulationTest {

  private static final double TRUTH = -3.0;

  /** Counts a side in each of three strata. */
  private static final int[][] COUNTS = {{14, 22}, {9, 6}, {30, 12}};

  private static final double[] LEVEL = {8.5, 7.0, 11.0};
  private static final double[] SPREAD_A = {1.2, 1.6, 2.0};
  private static final double[] SPREAD_B = {1.9, 1.3, 2.6};

  /** Visits of one horse in a year, all by one method. */
  private static final int VISITS = 8;

  private record Hits(int plain, int wider, int books) {
    String text() {
      return plain + " plain, " + wider + " wider of " + books;
    }
  }

  /** Every job its own horse: nothing is shared between jobs. */
  static List<Observation> independent(long seed) {
    Random random = new Random(seed);
    List<Observation> jobs = new ArrayList<>();
    for (int k = 0; k < COUNTS.length; k++) {
      for (int i = 0; i < COUNTS[k][0]; i++) {
        jobs.add(job(jobs.size(), k, Side.A, SPREAD_A[k] * random.nextGaussian()));
      }
      for (int i = 0; i < COUNTS[k][1]; i++) {
        jobs.add(job(jobs.size(), k, Side.B, SPREAD_B[k] * random.nextGaussian()));
      }
    }
    return jobs;
  }

  /** Each horse has its own level and keeps one method and one stratum all year. */
  static List<Observation> loyal(long seed) {
    Random random = new Random(seed);
    List<Observation> jobs = new ArrayList<>();
    for (int horse = 0; horse < 48; horse++) {
      double own = 1.1 * random.nextGaussian();
      Side side = horse % 2 == 0 ? Side.A : Side.B;
      for (int visit = 0; visit < VISITS; visit++) {
        jobs.add(job(horse, horse / 2 % 3, side, own + 1.7 * random.nextGaussian()));
      }
    }
    return jobs;
  }

  private static Observation job(int horse, int stratum, Side side, double noise) {
    double level = LEVEL[stratum] + (side == Side.A ? TRUTH : 0);
    return new Observation("horse " + horse, "stratum " + stratum, side, level + noise);
  }

  private static Hits run(int books, java.util.function.LongFunction<List<Observation>> maker) {
    List<StratifiedEstimate> estimates =
        IntStream.range(0, books)
            .mapToObj(seed -> StratifiedDifference.estimate(maker.apply(seed)).orElseThrow())
            .toList();
    return new Hits(
        holding(estimates.stream().map(StratifiedEstimate::plain).toList()),
        holding(estimates.stream().map(StratifiedEstimate::wider).toList()),
        books);
  }

  private static int holding(List<Optional<Interval>> intervals) {
    return (int) intervals.stream().filter(each -> each.orElseThrow().holds(TRUTH)).count();
  }

  private static void assertShare(int hits, int books, double low, double high) {
    double share = (double) hits / books;
    assertTrue(share >= low && share <= high, hits + " of " + books + " held the truth");
  }

  /** Three standard errors of a count around the range asked of the large run. */
  @Test
  void a_few_books_without_horse_effects_hold_the_truth_as_often_as_promised() {
    Hits hits = run(600, CoverageSimulationTest::independent);
    assertShare(hits.plain(), hits.books(), 0.94 - 0.029, 0.96 + 0.024);
  }

  @Test
  void a_few_books_of_loyal_horses_need_the_wider_interval() {
    Hits hits = run(200, CoverageSimulationTest::loyal);
    assertShare(hits.wider(), hits.books(), 0.93 - 0.054, 1);
    assertShare(hits.plain(), hits.books(), 0.55, 0.85);
  }

  @Test
  @Tag("demand")
  void ten_thousand_books_without_horse_effects() {
    Hits hits = run(10_000, CoverageSimulationTest::independent);
    System.out.println("without horse effects: " + hits.text());
    assertShare(hits.plain(), hits.books(), 0.940, 0.960);
  }

  @Test
  @Tag("demand")
  void two_thousand_books_of_loyal_horses() {
    Hits hits = run(2_000, CoverageSimulationTest::loyal);
    System.out.println("one method a horse: " + hits.text());
    assertShare(hits.wider(), hits.books(), 0.93, 1);
    assertShare(hits.plain(), hits.books(), 0.60, 0.80);
  }
}
