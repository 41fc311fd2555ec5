package clenchbook.comparison.breakeven;

import clenchbook.book.MaterialKind;
import clenchbook.book.Shaping;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.statistics.GroupTotals;
import clenchbook.statistics.Interval;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From how many shoes at a stop lighting the forge pays: what setting it up costs, over what a hot
 * shoe saves in wages less its gas.
 */
public final class ForgeBreakEven {

  /** The curve is drawn up to this many shoes a stop: six horses shod all round. */
  public static final int LONGEST_STOP = 24;

  private final Comparison shape;
  private final CompareRates rates;
  private final HorseDraws draws;
  private final GroupTotals totals;
  private final double[] forgeMinutes;
  private final double[] hotShoes;
  private final double wagePerMinute;
  private final double gasPerMinute;
  private final double setupWage;
  private final double setupGas;

  private ForgeBreakEven(
      Comparison shape, CompareRates rates, HorseDraws draws, List<ComparedJob> hot) {
    this.shape = shape;
    this.rates = rates;
    this.draws = draws;
    this.totals = draws.totals(shape.usedObservations());
    this.forgeMinutes = draws.sums(hot, job -> job.time().forge().doubleValue());
    this.hotShoes = draws.sums(hot, ComparedJob::shoes);
    this.wagePerMinute = rates.wagePerMinute();
    this.gasPerMinute = rates.gas(BigDecimal.ONE);
    this.setupWage = rates.setupMinutes().doubleValue() * wagePerMinute;
    this.setupGas = rates.gas(rates.setupGasMinutes());
  }

  /**
   * Prepares the figure.
   *
   * @param shape hot with cold, shape minutes per shoe
   * @param jobs the period's jobs that were done, in {@link ComparedJob#ORDER}
   */
  public static ForgeBreakEven of(Comparison shape, List<ComparedJob> jobs, CompareRates rates) {
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
    return setupWage * shift.wage() + setupGas * shift.gas();
  }

  /** Shape minutes that a hot shoe saves against a cold one; below 0 where it costs some. */
  double saved(int[] times, Shift shift) {
    return -totals.difference(times) * shift.minutes();
  }

  /** The gas of a hot shoe, without setting up; 0 where no hot shoe was drawn. */
  double gasPerShoe(int[] times, Shift shift) {
    double shoes = HorseDraws.weighted(times, hotShoes);
    double minutes = HorseDraws.weighted(times, forgeMinutes);
    return shoes > 0 ? minutes / shoes * gasPerMinute * shift.gas() : 0;
  }

  private double gainPerShoe(int[] times, Shift shift) {
    return saved(times, shift) * wagePerMinute * shift.wage() - gasPerShoe(times, shift);
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

  /**
   * One point of the break-even curve.
   *
   * @param shoes hot shoes at the stop
   * @param gain what lighting the forge brings there, in the currency
   * @param interval its interval by drawing horses again
   */
  public record CurvePoint(int shoes, double gain, Optional<Interval> interval) {}

  /** The figure with the curve that it is read from. */
  public record Answer(BreakEven figure, List<CurvePoint> curve) {}

  /** The figure, and the curve from one shoe up, empty where the book can't tell. */
  public Answer answer() {
    if (!enough()) {
      return new Answer(figure(OptionalDouble.empty(), Optional.empty()), List.of());
    }
    List<Optional<Interval>> intervals = draws.intervals(1 + LONGEST_STOP, this::figureAndCurve);
    double[] now = figureAndCurve(asItIs());
    List<CurvePoint> curve = new ArrayList<>();
    for (int shoes = 1; shoes <= LONGEST_STOP; shoes++) {
      curve.add(new CurvePoint(shoes, now[shoes], intervals.get(shoes)));
    }
    return new Answer(figure(OptionalDouble.of(now[0]), intervals.get(0)), List.copyOf(curve));
  }

  private double[] figureAndCurve(int[] times) {
    double[] values = new double[1 + LONGEST_STOP];
    values[0] = shoesPerStop(times, Shift.NONE);
    double gain = gainPerShoe(times, Shift.NONE);
    for (int shoes = 1; shoes <= LONGEST_STOP; shoes++) {
      values[shoes] = shoes * gain - setup(Shift.NONE);
    }
    return values;
  }

  private BreakEven figure(OptionalDouble value, Optional<Interval> interval) {
    return new BreakEven(
        Question.HOT_WITH_COLD,
        BreakEven.SHOES_PER_STOP,
        "shoes",
        value,
        interval,
        basis(),
        restsOn());
  }

  private Message restsOn() {
    return enough()
        ? Message.of(
            "comparison.rests.forge",
            rates.wage().isPresent() ? 1 : 0,
            rates.gasPerMinute().isPresent() ? 1 : 0,
            rates.setupGiven() ? 1 : 0)
        : Message.of("comparison.rests.few");
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
}
