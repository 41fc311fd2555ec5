package clenchbook.workload.posture;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.Score;

/**
 * A bent trunk held still: how long one hold may last.
 *
 * <p>Source: ISO 11226:2000, table 1 and figure 2 (from memory): 0 to 20 degrees acceptable; 20 to
 * 60 degrees without support acceptable for a holding time that falls in a straight line from 4
 * minutes to 1 minute; above 60 degrees not recommended.
 */
public final class TrunkPosture {

  /** The bend from which the standard limits the holding time, degrees. */
  public static final double LIMITED_FROM_DEGREES = 20;

  /** The bend above which the standard recommends no holding at all, degrees. */
  public static final double NOT_RECOMMENDED_ABOVE_DEGREES = 60;

  /** What the standard's holding time is and what it leaves out. */
  public static final Method METHOD =
      new Method(
          Phrase.of("bent-trunk holding time", "workload.hold"),
          Message.of("workload.hold.source"),
          Message.of("workload.hold.range"),
          Message.of("workload.hold.notCovered"));

  private TrunkPosture() {}

  /**
   * The longest acceptable hold.
   *
   * @param degrees how far the trunk is bent forward from upright
   * @return minutes, or why the standard gives none
   */
  public static Score longestHoldMinutes(double degrees) {
    if (!(degrees >= 0 && degrees <= 180)) {
      return outside(
          "trunk " + Digits.plain(degrees) + " degrees is not 0 to 180",
          "workload.fault.trunk",
          degrees);
    }
    if (degrees < LIMITED_FROM_DEGREES) {
      return outside(
          "trunk "
              + Digits.plain(degrees)
              + " degrees is below 20: acceptable, the standard sets no holding time",
          "workload.fault.trunkUpright",
          degrees);
    }
    if (degrees > NOT_RECOMMENDED_ABOVE_DEGREES) {
      return outside(
          "trunk "
              + Digits.plain(degrees)
              + " degrees is above 60: not recommended by the standard for any holding time",
          "workload.fault.trunkDeep",
          degrees);
    }
    return Score.of(4 - 3 * (degrees - LIMITED_FROM_DEGREES) / 40);
  }

  /**
   * One hold as a share of the longest acceptable one.
   *
   * @param degrees how far the trunk is bent
   * @param holdSeconds how long it is held
   * @return 1 = at the limit, not rounded, or why the standard gives none
   */
  public static Score shareOfLongestHold(double degrees, double holdSeconds) {
    return holdSeconds > 0
        ? longestHoldMinutes(degrees).map(minutes -> holdSeconds / 60 / minutes)
        : outside(
            "hold of " + Digits.plain(holdSeconds) + " s is not above 0",
            "workload.fault.hold",
            holdSeconds);
  }

  private static Score outside(String english, String key, double input) {
    return new Score.OutOfRange(Phrase.of(english, key, Digits.rounded(input, 2)));
  }
}
