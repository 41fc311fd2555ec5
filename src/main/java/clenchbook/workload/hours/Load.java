package clenchbook.workload.hours;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The work of a day or of several days added.
 *
 * @param minutes by activity; an absent one is none
 * @param horses horse-visits: a horse counts once a day
 * @param shoes nailed on and made
 * @param daysWorked days with a visit that was not cancelled
 * @param steelStops stops at which steel shoes were shaped, hot or cold
 */
public record Load(
    Map<Activity, Minutes> minutes, int horses, ShoeTally shoes, int daysWorked, int steelStops) {

  /** No work. */
  public static final Load NONE = new Load(Map.of(), 0, ShoeTally.NONE, 0, 0);

  /** Copies the map, in the order of the activities. */
  public Load {
    Map<Activity, Minutes> copy = new EnumMap<>(Activity.class);
    copy.putAll(minutes);
    minutes = Collections.unmodifiableMap(copy);
  }

  /**
   * Minutes of one activity only.
   *
   * @param activity which
   * @param minutes how many
   * @return a load without horses, shoes or days
   */
  public static Load of(Activity activity, Minutes minutes) {
    return new Load(Map.of(activity, minutes), 0, ShoeTally.NONE, 0, 0);
  }

  /**
   * Both together.
   *
   * @param other more work
   * @return the sums
   */
  public Load plus(Load other) {
    Map<Activity, Minutes> sum = new EnumMap<>(Activity.class);
    sum.putAll(minutes);
    other.minutes.forEach((activity, more) -> sum.merge(activity, more, Minutes::plus));
    return new Load(
        sum,
        horses + other.horses,
        shoes.plus(other.shoes),
        daysWorked + other.daysWorked,
        steelStops + other.steelStops);
  }

  /**
   * The minutes of an activity.
   *
   * @param activity which
   * @return none when there are none
   */
  public Minutes minutes(Activity activity) {
    return minutes.getOrDefault(activity, Minutes.NONE);
  }

  /**
   * The minutes of a measure.
   *
   * @param measure which
   * @return the sum over its activities
   */
  public Minutes minutes(HoursMeasure measure) {
    Minutes sum = Minutes.NONE;
    for (Map.Entry<Activity, Minutes> entry : minutes.entrySet()) {
      sum = measure.holds(entry.getKey()) ? sum.plus(entry.getValue()) : sum;
    }
    return measure == HoursMeasure.IN_ALL ? sum.whole() : sum;
  }

  /**
   * The hours of a measure.
   *
   * @param measure which
   * @return hours, not rounded
   */
  public double hours(HoursMeasure measure) {
    return minutes(measure).hours();
  }

  /**
   * All hours, driving included.
   *
   * @return hours, not rounded
   */
  public double hours() {
    return hours(HoursMeasure.IN_ALL);
  }

  /**
   * How much of all minutes was measured.
   *
   * @return 0 to 1; 0 when there are none
   */
  public double shareMeasured() {
    Minutes all = minutes(HoursMeasure.IN_ALL);
    return all.total() > 0 ? all.measured() / all.total() : 0;
  }
}
