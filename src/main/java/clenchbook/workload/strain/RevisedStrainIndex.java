package clenchbook.workload.strain;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.Score;
import java.util.Optional;

/**
 * The Revised Strain Index of one kind of hand effort: five multipliers, all continuous.
 *
 * <p>Source: Garg, Moore, Kapellusch, The Revised Strain Index, Ergonomics 60(7):912-922, 2017, doi
 * 10.1080/00140139.2016.1237678.
 */
public final class RevisedStrainIndex {

  /** The index up to which its authors call a task safe (from memory). */
  public static final double SAFE_UP_TO = 10;

  /** What the index is and what it leaves out. */
  public static final Method METHOD =
      new Method(
          Phrase.of("Revised Strain Index", "workload.rsi"),
          Message.of("workload.rsi.source"),
          Message.of("workload.rsi.range"),
          Message.of("workload.rsi.notCovered"));

  private static final double LONGEST_DAY_HOURS = 24;
  private static final double FURTHEST_WRIST_DEGREES = 90;

  private RevisedStrainIndex() {}

  /**
   * The index of one kind of effort.
   *
   * @param effort as rated
   * @param hours of the day spent on it
   * @return the index, not rounded, or which input lies outside the range
   */
  public static Score of(HandEffort effort, double hours) {
    return faultIn(effort, hours)
        .<Score>map(Score.OutOfRange::new)
        .orElseGet(
            () ->
                Score.of(
                    withoutFrequency(effort, hours)
                        * effortsMultiplier(effort.effortsPerMinute())));
  }

  /** The index before the efforts multiplier; what the composite index builds on. */
  static double withoutFrequency(HandEffort effort, double hours) {
    return intensityMultiplier(effort.effortCr10() / 10)
        * durationMultiplier(effort.secondsPerEffort())
        * postureMultiplier(effort.wristDegrees(), effort.direction())
        * hoursMultiplier(hours);
  }

  /** The first input outside the range, as a sentence part; empty when all lie inside. */
  static Optional<Phrase> faultIn(HandEffort effort, double hours) {
    if (!(effort.effortCr10() > 0 && effort.effortCr10() <= 10)) {
      return fault(
          "effort " + Digits.plain(effort.effortCr10()) + " is not above 0 and up to 10",
          "workload.fault.effort",
          Digits.rounded(effort.effortCr10(), 2));
    }
    if (!(effort.effortsPerMinute() > 0 && effort.secondsPerEffort() > 0)) {
      return fault(
          "efforts per minute and seconds per effort must be above 0", "workload.fault.noEfforts");
    }
    if (effort.effortsPerMinute() * effort.secondsPerEffort() > 60) {
      return fault(
          Digits.plain(effort.effortsPerMinute())
              + " efforts of "
              + Digits.plain(effort.secondsPerEffort())
              + " s do not fit in a minute",
          "workload.fault.busyMinute",
          Digits.rounded(effort.effortsPerMinute(), 2),
          Digits.rounded(effort.secondsPerEffort(), 2));
    }
    return faultIn(effort.wristDegrees(), hours);
  }

  private static Optional<Phrase> faultIn(double wristDegrees, double hours) {
    if (!(wristDegrees >= 0 && wristDegrees <= FURTHEST_WRIST_DEGREES)) {
      return fault(
          "wrist " + Digits.plain(wristDegrees) + " degrees is not 0 to 90",
          "workload.fault.wrist",
          Digits.rounded(wristDegrees, 2));
    }
    if (!(hours > 0 && hours <= LONGEST_DAY_HOURS)) {
      return fault(
          Digits.plain(hours) + " hours a day is not above 0 and up to 24",
          "workload.fault.hours",
          Digits.rounded(hours, 2));
    }
    return Optional.empty();
  }

  private static Optional<Phrase> fault(String english, String key, Object... gaps) {
    return Optional.of(Phrase.of(english, key, gaps));
  }

  /**
   * How hard.
   *
   * @param intensity share of the greatest strength, above 0 to 1 (CR-10 rating / 10)
   * @return the multiplier
   */
  public static double intensityMultiplier(double intensity) {
    double i = intensity;
    return i <= 0.4
        ? 30.00 * i * i * i - 15.60 * i * i + 13.00 * i + 0.40
        : 36.00 * i * i * i - 33.30 * i * i + 24.77 * i - 1.86;
  }

  /**
   * How often.
   *
   * @param perMinute efforts a minute
   * @return the multiplier
   */
  public static double effortsMultiplier(double perMinute) {
    return perMinute <= 90 ? 0.10 + 0.25 * perMinute : 0.00334 * Math.pow(perMinute, 1.96);
  }

  /**
   * How long each effort lasts.
   *
   * @param seconds per effort
   * @return the multiplier
   */
  public static double durationMultiplier(double seconds) {
    return seconds <= 60 ? 0.45 + 0.31 * seconds : 19.17 * Math.log(seconds) - 59.44;
  }

  /**
   * How far the wrist is bent; extension up to 30 degrees costs nothing.
   *
   * @param degrees from straight
   * @param direction which way
   * @return the multiplier
   */
  public static double postureMultiplier(double degrees, WristDirection direction) {
    if (direction == WristDirection.FLEXION) {
      return 1.2 * Math.exp(0.009 * degrees) - 0.2;
    }
    double beyond = Math.max(0, degrees - 30);
    return 1.0 + 0.00028 * beyond * beyond;
  }

  /**
   * How much of the day.
   *
   * @param hours a day
   * @return the multiplier; 0.20 up to 0.05 hours
   */
  public static double hoursMultiplier(double hours) {
    return hours <= 0.05 ? 0.20 : 0.042 * hours + 0.090 * Math.log(hours) + 0.477;
  }
}
