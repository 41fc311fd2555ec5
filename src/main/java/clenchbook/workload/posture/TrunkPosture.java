package clenchbook.workload.posture;

import clenchbook.workload.hours.Digits;
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
          "bent-trunk holding time",
          "ISO 11226:2000, table 1 and figure 2 (from memory)",
          "trunk bent forward 20 to 60 degrees, without support",
          "above 60 degrees the standard recommends no holding, so there is no time to compare"
              + " with; twisting, loads, a horse that leans or pulls, recovery between holds");

  private TrunkPosture() {}

  /**
   * The longest acceptable hold.
   *
   * @param degrees how far the trunk is bent forward from upright
   * @return minutes, or why the standard gives none
   */
  public static Score longestHoldMinutes(double degrees) {
    if (!(degrees >= 0 && degrees <= 180)) {
      return new Score.OutOfRange("trunk " + Digits.plain(degrees) + " degrees is not 0 to 180");
    }
    if (degrees < LIMITED_FROM_DEGREES) {
      return new Score.OutOfRange(
          "trunk "
              + Digits.plain(degrees)
              + " degrees is below 20: acceptable, the standard sets no holding time");
    }
    if (degrees > NOT_RECOMMENDED_ABOVE_DEGREES) {
      return new Score.OutOfRange(
          "trunk "
              + Digits.plain(degrees)
              + " degrees is above 60: not recommended by the standard for any holding time");
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
        : new Score.OutOfRange("hold of " + Digits.plain(holdSeconds) + " s is not above 0");
  }
}
