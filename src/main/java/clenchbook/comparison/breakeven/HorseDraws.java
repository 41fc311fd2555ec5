package clenchbook.comparison.breakeven;

import clenchbook.comparison.questions.ComparedJob;
import clenchbook.statistics.GroupBootstrap;
import clenchbook.statistics.GroupTotals;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Observation;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Horses drawn again and again, with all their jobs, for intervals of figures that are no plain
 * difference. The seed is fixed, and the horses stand in the order of their first jobs, so that the
 * same book gives the same intervals.
 */
public final class HorseDraws {

  /** Enough that the ends of an interval are steady to about a tenth of its width. */
  public static final int MOST_TIMES = 2000;

  /** A book of more jobs than this has intervals so narrow that fewer draws do. */
  public static final int MANY_JOBS = 5000;

  private static final int FEWEST_TIMES = 500;

  private static final long SEED = 20_260_101L;

  private final List<String> horses;
  private final Map<String, Integer> places = new HashMap<>();
  private final GroupBootstrap draws;

  private HorseDraws(List<String> horses, int jobs) {
    this.horses = horses;
    this.draws = new GroupBootstrap(horses.size(), times(jobs), SEED);
    horses.forEach(horse -> places.put(horse, places.size()));
  }

  /** Draws over the horses of these jobs, which stand in {@link ComparedJob#ORDER}. */
  static HorseDraws of(List<ComparedJob> jobs) {
    return new HorseDraws(jobs.stream().map(ComparedJob::horse).distinct().toList(), jobs.size());
  }

  /** How often horses are drawn in a book of so many jobs. */
  static int times(int jobs) {
    long fair = (long) MOST_TIMES * MANY_JOBS / Math.max(1, jobs);
    return (int) Math.max(FEWEST_TIMES, Math.min(MOST_TIMES, fair));
  }

  GroupTotals totals(List<Observation> observations) {
    return GroupTotals.of(observations, horses);
  }

  /** The place of a job's horse among the draws' counts. */
  int place(ComparedJob job) {
    return places.getOrDefault(job.horse(), -1);
  }

  /** Every horse once: the book as it is. */
  int[] asItIs() {
    int[] once = new int[horses.size()];
    Arrays.fill(once, 1);
    return once;
  }

  /** A sum over jobs, by horse; the jobs' horses are all among the draws. */
  double[] sums(List<ComparedJob> jobs, ToDoubleFunction<ComparedJob> what) {
    double[] sums = new double[horses.size()];
    jobs.forEach(job -> sums[place(job)] += what.applyAsDouble(job));
    return sums;
  }

  /** A sum by horse with each horse counted so many times. */
  static double weighted(int[] times, double[] sums) {
    double sum = 0;
    for (int i = 0; i < sums.length; i++) {
      sum += times[i] * sums[i];
    }
    return sum;
  }

  /** The intervals of several estimates over the same draws. */
  List<Optional<Interval>> intervals(int count, Function<int[], double[]> estimates) {
    return draws.intervals(count, estimates);
  }
}
