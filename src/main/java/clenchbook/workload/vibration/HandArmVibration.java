package clenchbook.workload.vibration;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.Score;
import java.util.List;
import java.util.Optional;

/**
 * Hand-arm vibration of a day: the eight-hour value A(8) and the exposure points.
 *
 * <p>Sources: ISO 5349-1:2001 for A(8); SI 2005/1093, regulation 4, and Directive 2002/44/EC,
 * article 3, for the action and limit values, which are the same; the points as in the HSE
 * ready-reckoner (100 points = action value).
 */
public final class HandArmVibration {

  /** The daily exposure action value, metres per second squared A(8). */
  public static final double ACTION_VALUE = 2.5;

  /** The daily exposure limit value, metres per second squared A(8). */
  public static final double LIMIT_VALUE = 5.0;

  /** What the measure is called. */
  public static final Phrase NAME = Phrase.of("hand-arm vibration A(8)", "workload.vibration");

  private HandArmVibration() {}

  /**
   * What A(8) is and what it leaves out, with the law that sets its action and limit values.
   *
   * @param country two-letter code, any case; any other country is shown the directive's values
   * @return the method
   */
  public static Method method(String country) {
    return new Method(
        NAME,
        country.strip().equalsIgnoreCase("GB")
            ? Message.of("workload.vibration.sourceBritain")
            : Message.of("workload.vibration.sourceDirective"),
        Message.of("workload.vibration.range"),
        Message.of("workload.vibration.notCovered"));
  }

  /**
   * One tool's share of the day.
   *
   * @param metresPerSecondSquared the tool's vibration total value
   * @param hours with the hand on the running tool
   */
  public record ToolHours(double metresPerSecondSquared, double hours) {}

  /**
   * The eight-hour value.
   *
   * @param tools of the day, in any order
   * @return A(8) in metres per second squared, not rounded, or which input lies outside the range
   */
  public static Score dailyExposure(List<ToolHours> tools) {
    return faultIn(tools)
        .<Score>map(Score.OutOfRange::new)
        .orElseGet(() -> Score.of(eightHourValue(tools)));
  }

  private static double eightHourValue(List<ToolHours> tools) {
    double squares =
        tools.stream()
            .mapToDouble(tool -> square(tool.metresPerSecondSquared()) * tool.hours() / 8)
            .sum();
    return Math.sqrt(squares);
  }

  /**
   * The exposure points: 100 at the action value, 400 at the limit value; they add over tools.
   *
   * @param tools of the day, in any order
   * @return points, not rounded, or which input lies outside the range
   */
  public static Score points(List<ToolHours> tools) {
    return dailyExposure(tools).map(a8 -> 100 * square(a8 / ACTION_VALUE));
  }

  private static Optional<Phrase> faultIn(List<ToolHours> tools) {
    double hours = 0;
    for (ToolHours tool : tools) {
      if (!(tool.metresPerSecondSquared() > 0 && tool.metresPerSecondSquared() <= 100)) {
        return Optional.of(
            Phrase.of(
                "vibration "
                    + Digits.plain(tool.metresPerSecondSquared())
                    + " m/s2 is not above 0 and up to 100",
                "workload.fault.vibration",
                Digits.rounded(tool.metresPerSecondSquared(), 2)));
      }
      hours += tool.hours();
    }
    return hours > 0 && hours <= 24
        ? Optional.empty()
        : Optional.of(
            Phrase.of(
                Digits.plain(hours) + " tool hours in one day",
                "workload.fault.toolHours",
                Digits.rounded(hours, 2)));
  }

  private static double square(double number) {
    return number * number;
  }
}
