package clenchbook.comparison;

import clenchbook.book.MaterialKind;
import clenchbook.book.Shaping;
import clenchbook.comparison.statistics.GroupTotals;
import clenchbook.comparison.statistics.Interval;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From how many shoes at a stop lighting the forge pays: what setting it up costs, over what a hot
 * shoe saves in wages less its gas.
 */
public final class ForgeBreakEven {

  /** The curve is drawn up to this many shoes a stop: six horses shod all round. */
  static final int LONGEST_STOP = 24;

  private final Comparison shape;
  private final CompareRates rates;
  private final HorseDraws draws;
  private final GroupTotals totals;
  private final double[] forgeMinutes;
  private final double[] hotShoes;

  private ForgeBreakEven(
      Comparison shape, CompareRates rates, HorseDraws draws, List<ComparedJob> hot) {
    this.shape = shape;
    this.rates = rates;
    this.draws = draws;
    this.totals = draws.totals(shape.usedObservations());
    this.forgeMinutes = draws.sums(hot, job -> job.time().forge().doubleValue());
    this.hotShoes = draws.sums(hot, ComparedJob::shoes);
  }

  /**
   * Prepares the figure.
   *
   * @param shape hot with cold, shape minutes per shoe
   * @param jobs the period's jobs that were done, in {@link ComparedJob#ORDER}
   */
  static ForgeBreakEven of(Comparison shape, List<ComparedJob> jobs, CompareRates rates) {
    List<ComparedJob> hot = jobs.stream().filter(ForgeBreakEven::hotSteel).toList();
    return new ForgeBreakEven(shape, rates, HorseDraws.of(jobs), hot);
  }

  private static boolean hotSteel(ComparedJob job) {
    return job.shoes() > 0 && job.shaped(Shaping.HOT) && !job.has(MaterialKind.ALUMINIUM);
  }

  /** Whether the book has jobs enough to tell. */
  boolean enough() {
    return shape.enough();
  }

  /** What setting the forge up at a stop costs in wages and gas. */
  double setup(Shift shift) {
    return rates.setupMinutes().doubleValue() * rates.wagePerMinute() * shift.wage()
        + rates.gas(rates.setupGasMinutes()) * shift.gas();
  }

  /** Shape minutes that a hot shoe saves against a cold one; below 0 where it costs some. */
  double saved(int[] times, Shift shift) {
    return -totals.difference(times) * shift.minutes();
  }

  /** The gas of a hot shoe, without setting up; 0 where no hot shoe was drawn. */
  double gasPerShoe(int[] times, Shift shift) {
    double shoes = HorseDraws.weighted(times, hotShoes);
    double minutes = HorseDraws.weighted(times, forgeMinutes);
    double perMinute = rates.gas(java.math.BigDecimal.ONE);
    return shoes > 0 ? minutes / shoes * perMinute * shift.gas() : 0;
  }

  private double gainPerShoe(int[] times, Shift shift) {
    return saved(times, shift) * rates.wagePerMinute() * shift.wage() - gasPerShoe(times, shift);
  }

  /** Shoes a stop; positive infinity for never; not a number where the draw can't tell. */
  double shoesPerStop(int[] times, Shift shift) {
    double gain = gainPerShoe(times, shift);
    if (Double.isNaN(gain)) {
      return Double.NaN;
    }
    return gain > 0 ? setup(shift) / gain : Double.POSITIVE_INFINITY;
  }

  /** What lighting the forge brings at a stop of so many shoes, set-up paid. */
  double gain(int shoes, int[] times, Shift shift) {
    return shoes * gainPerShoe(times, shift) - setup(shift);
  }

  /** The book as it is, every horse once. */
  int[] asItIs() {
    return draws.asItIs();
  }

  /** The figure. */
  BreakEven figure() {
    boolean told = enough();
    return new BreakEven(
        Question.HOT_WITH_COLD,
        BreakEven.SHOES_PER_STOP,
        "shoes",
        told ? OptionalDouble.of(shoesPerStop(asItIs(), Shift.NONE)) : OptionalDouble.empty(),
        told
            ? draws.interval(times -> shoesPerStop(times, Shift.NONE))
            : Optional.<Interval>empty(),
        basis());
  }

  private String basis() {
    if (!enough()) {
      return Verdict.NOT_ENOUGH_JOBS.word();
    }
    return "shape minutes measured; wage "
        + (rates.wage().isPresent() ? "given" : "not given")
        + "; gas cost "
        + (rates.gasPerMinute().isPresent() ? "given" : "not given")
        + "; forge set-up "
        + (rates.setupGiven() ? "given" : "default");
  }

  /** The curve from one shoe up; empty where the book can't tell. */
  List<Comparisons.CurvePoint> curve() {
    if (!enough()) {
      return List.of();
    }
    return java.util.stream.IntStream.rangeClosed(1, LONGEST_STOP)
        .mapToObj(
            shoes ->
                new Comparisons.CurvePoint(
                    shoes,
                    gain(shoes, asItIs(), Shift.NONE),
                    draws.interval(times -> gain(shoes, times, Shift.NONE))))
        .toList();
  }
}
