package clenchbook.comparison.breakeven;

import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.JobMoney;
import clenchbook.comparison.questions.JobTime;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Side;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * What a handmade set needs to earn by the hour what keg earns in the same stratum: the extra price
 * of a set, or the minutes a shoe may take to make.
 *
 * <p>A job with R left of its charge after all costs but overhead and labour, t minutes in all and
 * o of overhead an hour earns 60 R / t − o by the hour. Each figure is the value at which the
 * weighted mean difference of stratum {@code all} becomes 0; gas for making is left as it is.
 */
public final class HandmadeBreakEven {

  /** No shoe takes longer to make than a working day. */
  private static final double LONGEST = 480;

  /** How many earlier points the solver draws its curve through. */
  private static final int ORDER = 5;

  private static final int MOST_STEPS = 200;

  private static final String MEASURED = "minutes measured; making minutes standard";

  /** Near enough in minutes. */
  private static final double NEAR = 1e-9;

  /** A job with all that a draw needs of it. */
  private record Piece(
      int horse,
      int stratum,
      double charged,
      double materials,
      double gas,
      double other,
      double work,
      double drive,
      double making,
      double overheadPerHour,
      double newShoes) {

    double earns(Shift shift, double makingMinutes, double extra) {
      double rest =
          charged * shift.price() + extra - materials * shift.steel() - gas * shift.gas() - other;
      double minutes = (work + makingMinutes) * shift.minutes() + drive;
      return 60 * rest / minutes - overheadPerHour;
    }
  }

  private final Comparison earned;
  private final HorseDraws draws;
  private final List<Piece> handmade = new ArrayList<>();
  private final List<Piece> keg = new ArrayList<>();
  private final int strata;

  private HandmadeBreakEven(Comparison earned) {
    this.earned = earned;
    List<Comparison.Entry> used = earned.used();
    this.draws = HorseDraws.of(used.stream().map(Comparison.Entry::job).toList());
    Map<String, Integer> numbers = new HashMap<>();
    for (Comparison.Entry entry : used) {
      int number = numbers.computeIfAbsent(entry.stratum(), name -> numbers.size());
      (entry.side() == Side.A ? handmade : keg).add(piece(entry, number));
    }
    this.strata = numbers.size();
  }

  /**
   * Prepares the figures.
   *
   * @param earned handmade with keg, earned per hour
   */
  public static HandmadeBreakEven of(Comparison earned) {
    return new HandmadeBreakEven(earned);
  }

  private Piece piece(Comparison.Entry entry, int stratum) {
    JobMoney money = entry.job().money();
    JobTime time = entry.job().time();
    return new Piece(
        draws.place(entry.job()),
        stratum,
        money.charged().doubleValue(),
        money.materials().doubleValue(),
        money.gas().doubleValue(),
        money.sundries().add(money.travel()).doubleValue(),
        time.job().doubleValue(),
        time.drive().doubleValue(),
        time.making().doubleValue(),
        60 * money.overhead().doubleValue() / time.all().doubleValue(),
        entry.job().newShoes());
  }

  /** Whether the book has jobs enough to tell. */
  boolean enough() {
    return earned.enough();
  }

  /** A draw's counts and the keg side's sums, which no rule for the handmade changes. */
  private final class Draw {
    private final int[] times;
    private final Shift shift;
    private final double[] countA = new double[strata];
    private final double[] countB = new double[strata];
    private final double[] kegSum = new double[strata];

    Draw(int[] times, Shift shift) {
      this.times = times;
      this.shift = shift;
      handmade.forEach(piece -> countA[piece.stratum()] += times[piece.horse()]);
      for (Piece piece : keg) {
        int drawn = times[piece.horse()];
        if (drawn > 0) {
          countB[piece.stratum()] += drawn;
          kegSum[piece.stratum()] += drawn * piece.earns(shift, piece.making(), 0);
        }
      }
    }

    /** The weighted mean difference by the hour, not a number where the draw can't tell. */
    double difference(ToDoubleFunction<Piece> making, double extra) {
      return weightedMeanA(piece -> piece.earns(shift, making.applyAsDouble(piece), extra))
          - weightedMeanB();
    }

    private double weightedMeanB() {
      return weighted(kegSum, countB);
    }

    private double weightedMeanA(ToDoubleFunction<Piece> what) {
      double[] sum = new double[strata];
      for (Piece piece : handmade) {
        if (times[piece.horse()] > 0) {
          sum[piece.stratum()] += times[piece.horse()] * what.applyAsDouble(piece);
        }
      }
      return weighted(sum, countA);
    }

    private double weighted(double[] sum, double[] count) {
      double weighted = 0;
      double weights = 0;
      for (int k = 0; k < strata; k++) {
        if (countA[k] >= 2 && countB[k] >= 2) {
          double weight = countA[k] * countB[k] / (countA[k] + countB[k]);
          weighted += weight * sum[k] / count[k];
          weights += weight;
        }
      }
      return weights > 0 ? weighted / weights : Double.NaN;
    }

    double taking(double perShoe) {
      return difference(piece -> perShoe * piece.newShoes(), 0);
    }
  }

  /** The extra price of a set; below 0 where handmade already earns more. */
  double extraPrice(int[] times, Shift shift) {
    Draw draw = new Draw(times, shift);
    double without = draw.difference(Piece::making, 0);
    double perUnit = draw.difference(Piece::making, 1) - without;
    return -without / perUnit;
  }

  /**
   * Making minutes a shoe at today's price; negative infinity where even none would be too many,
   * not a number where a working day would be too few or the draw can't tell.
   */
  double makingMinutes(int[] times, Shift shift) {
    return makingMinutes(times, shift, LONGEST / 2);
  }

  /** The same, looked for first about {@code near}, which most draws lie close to. */
  private double makingMinutes(int[] times, Shift shift, double near) {
    Draw draw = new Draw(times, shift);
    double none = draw.taking(0);
    if (none <= 0) {
      return Double.NEGATIVE_INFINITY;
    }
    if (Double.isNaN(none) || draw.taking(LONGEST) > 0) {
      return Double.NaN;
    }
    double start = near > 0 && near < LONGEST ? near : LONGEST / 2;
    return new BracketingNthOrderBrentSolver(NEAR, ORDER)
        .solve(MOST_STEPS, draw::taking, 0, LONGEST, start);
  }

  /** Making minutes a new handmade shoe takes now; empty where none was made. */
  OptionalDouble makingNow() {
    double shoes = handmade.stream().mapToDouble(Piece::newShoes).sum();
    double minutes = handmade.stream().mapToDouble(Piece::making).sum();
    return shoes > 0 ? OptionalDouble.of(minutes / shoes) : OptionalDouble.empty();
  }

  /** The book as it is, every horse once. */
  int[] asItIs() {
    return draws.asItIs();
  }

  /** The two figures and, for comparison, what making takes now. */
  public List<BreakEven> figures() {
    double[] now = enough() ? both(asItIs(), LONGEST / 2) : new double[] {Double.NaN, Double.NaN};
    List<Optional<Interval>> intervals =
        enough()
            ? draws.intervals(2, times -> both(times, now[1]))
            : List.of(Optional.empty(), Optional.empty());
    return List.of(
        figure(BreakEven.EXTRA_PRICE, "money", known(now[0]), intervals.get(0)),
        figure(BreakEven.MAKING_MINUTES, "minutes", known(now[1]), intervals.get(1)),
        figure(
            BreakEven.MAKING_NOW,
            "minutes",
            enough() ? makingNow() : OptionalDouble.empty(),
            Optional.empty()));
  }

  private double[] both(int[] times, double near) {
    return new double[] {extraPrice(times, Shift.NONE), makingMinutes(times, Shift.NONE, near)};
  }

  private static OptionalDouble known(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private BreakEven figure(
      String quantity, String unit, OptionalDouble value, Optional<Interval> interval) {
    boolean standard = quantity.equals(BreakEven.MAKING_NOW);
    Message restsOn =
        standard ? Message.of("comparison.rests.standard") : Message.of("comparison.rests.minutes");
    return new BreakEven(
        Question.HANDMADE_WITH_KEG,
        quantity,
        unit,
        value,
        value.isEmpty() ? Optional.empty() : interval,
        basis(standard),
        enough() ? restsOn : Message.of("comparison.rests.few"));
  }

  private String basis(boolean standard) {
    if (!enough()) {
      return Verdict.NOT_ENOUGH_JOBS.word();
    }
    return standard ? "standard of sheet Materials" : MEASURED;
  }
}
