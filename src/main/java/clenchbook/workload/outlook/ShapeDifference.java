package clenchbook.workload.outlook;

import clenchbook.comparison.Comparisons;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Verdict;
import clenchbook.statistics.Interval;
import clenchbook.workload.hours.Estimate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What hot shaping takes more or less than cold, from the comparisons, like with like.
 *
 * @param minutesPerShoe hot less cold, minutes a shoe; negative where hot is quicker
 * @param low lower end of its 95 % interval; empty where there is none
 * @param high upper end; empty where there is none
 * @param verdict what the comparison says of it
 */
public record ShapeDifference(
    double minutesPerShoe, OptionalDouble low, OptionalDouble high, Verdict verdict) {

  /**
   * The difference that a period's comparisons show.
   *
   * @param comparisons of any period, as a rule the twelve months that end with the day
   * @return empty when there are not enough measured jobs of both kinds
   */
  public static Optional<ShapeDifference> of(Comparisons comparisons) {
    Comparison shape =
        comparisons.comparison(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE);
    return shape
        .estimate()
        .filter(found -> shape.enough())
        .map(
            found ->
                new ShapeDifference(
                    found.difference(),
                    end(shape.wider().map(Interval::low)),
                    end(shape.wider().map(Interval::high)),
                    shape.verdict()));
  }

  private static OptionalDouble end(Optional<Double> end) {
    return end.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  /**
   * Whether the book shows a difference: its verdict rests on the wider interval.
   *
   * @return false where the interval holds zero
   */
  public boolean shown() {
    return verdict == Verdict.A_LOWER || verdict == Verdict.A_HIGHER;
  }

  /** The difference with its interval. */
  public Estimate estimate() {
    return new Estimate(
        minutesPerShoe,
        low.isPresent() && high.isPresent()
            ? Optional.of(new Interval(low.getAsDouble(), high.getAsDouble()))
            : Optional.empty());
  }
}
