package clenchbook.workload.methods;

import clenchbook.workload.hours.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one method says of one day.
 *
 * @param subject what it is about
 * @param measure the method's name, with the task where it scores one task
 * @param method the method
 * @param score the number, or why there is none
 * @param unit of the number
 * @param guidance the published value it is set against, in the same unit; empty where there is
 *     none
 * @param guidanceName what that value is called; empty where there is none
 * @param basis which of the farrier's ratings and hours it rests on, in the figures' English
 */
public record MethodScore(
    Subject subject,
    Measure measure,
    Method method,
    Score score,
    Unit unit,
    OptionalDouble guidance,
    Optional<Phrase> guidanceName,
    String basis) {

  /** What a score is about, and so what can be done. */
  public enum Subject {
    /** Noise at the ear. */
    NOISE,
    /** Hand and wrist. */
    STRAIN,
    /** Vibrating tools. */
    VIBRATION,
    /** A bent back. */
    POSTURE
  }
}
