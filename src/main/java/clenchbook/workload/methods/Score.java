package clenchbook.workload.methods;

import clenchbook.workload.hours.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** The outcome of a method: a number, or the reason why there is none. */
public sealed interface Score {

  /**
   * A score that lies within the method's range.
   *
   * @param value in the method's own unit, not rounded
   */
  record Computed(double value) implements Score {}

  /**
   * An input outside the method's range: nothing is computed.
   *
   * @param reason the input, its value and the range, as a sentence part
   */
  record OutOfRange(Phrase reason) implements Score {}

  /**
   * A score from a number.
   *
   * @param number finite
   * @return the score
   * @throws IllegalArgumentException when the number is not finite
   */
  static Score of(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("not a finite score: " + number);
    }
    return new Computed(number);
  }

  /**
   * The number, if there is one.
   *
   * @return empty when an input was out of range
   */
  default OptionalDouble number() {
    return this instanceof Computed computed
        ? OptionalDouble.of(computed.value())
        : OptionalDouble.empty();
  }

  /**
   * Why there is no number.
   *
   * @return empty when there is one
   */
  default Optional<Phrase> why() {
    return this instanceof OutOfRange out ? Optional.of(out.reason()) : Optional.empty();
  }

  /**
   * The score with its number changed; an absent one stays absent for the same reason.
   *
   * @param change applied to the number
   * @return the changed score
   */
  default Score map(DoubleUnaryOperator change) {
    return this instanceof Computed computed ? of(change.applyAsDouble(computed.value())) : this;
  }
}
