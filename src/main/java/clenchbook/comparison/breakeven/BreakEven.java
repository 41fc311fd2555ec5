package clenchbook.comparison.breakeven;

import clenchbook.comparison.questions.Question;
import clenchbook.statistics.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One break-even figure.
 *
 * @param question which question it belongs to
 * @param quantity its name in files
 * @param unit its unit
 * @param value empty where the book can't tell; positive infinity for never
 * @param interval its interval by drawing horses again; an infinite end is never
 * @param basis what it rests on, in words
 */
public record BreakEven(
    Question question,
    String quantity,
    String unit,
    OptionalDouble value,
    Optional<Interval> interval,
    String basis) {

  /** Name of the shoes a stop from which lighting the forge pays. */
  public static final String SHOES_PER_STOP = "shoes per stop";

  /** Name of the extra price at which a handmade set earns what keg earns. */
  public static final String EXTRA_PRICE = "extra price per set";

  /** Name of the making minutes a shoe at which it does so at today's price. */
  public static final String MAKING_MINUTES = "making minutes per shoe";

  /** Name of the making minutes a shoe takes now. */
  public static final String MAKING_NOW = "making minutes per shoe now";

  /** Whether it never pays. */
  public boolean never() {
    return value.isPresent() && Double.isInfinite(value.getAsDouble());
  }

  /** Whether there is a number. */
  public boolean known() {
    return value.isPresent() && !never();
  }
}
