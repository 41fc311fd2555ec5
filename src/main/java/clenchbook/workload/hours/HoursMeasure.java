package clenchbook.workload.hours;

import java.util.EnumSet;
import java.util.Set;

/** The measures of hours, by the names under which the figures list them. */
public enum HoursMeasure {
  /** Trimming and nailing. */
  UNDER_THE_HORSE("hours under the horse", "under the horse", Activity.TRIM, Activity.NAIL),
  /** Shaping hot. */
  AT_THE_ANVIL("hours at the anvil", "at the anvil", Activity.SHAPE_HOT),
  /** Shaping cold. */
  AT_THE_STALL_JACK("hours at the stall jack", "at the stall jack", Activity.SHAPE_COLD),
  /** Making shoes. */
  MAKING("hours making", "making", Activity.MAKE),
  /** Grinding. */
  GRINDING("hours grinding", "grinding", Activity.GRIND),
  /** Setting the forge up. */
  SETTING_UP("hours setting up", "setting up", Activity.SET_UP),
  /** Driving. */
  DRIVING("hours driving", "driving", Activity.DRIVE),
  /** Everything. */
  IN_ALL("hours in all", "in all", Activity.values());

  private final String measure;
  private final String shortName;
  private final Set<Activity> activities;

  HoursMeasure(String measure, String shortName, Activity... activities) {
    this.measure = measure;
    this.shortName = shortName;
    Set<Activity> all = EnumSet.noneOf(Activity.class);
    all.addAll(Set.of(activities));
    this.activities = all;
  }

  /**
   * The name in the figures.
   *
   * @return such as {@code hours at the anvil}
   */
  public String measure() {
    return measure;
  }

  /**
   * The name beside a column of hours.
   *
   * @return such as {@code at the anvil}
   */
  public String shortName() {
    return shortName;
  }

  /**
   * Whether an activity counts in.
   *
   * @param activity the activity
   * @return true when its minutes belong to this measure
   */
  public boolean holds(Activity activity) {
    return activities.contains(activity);
  }
}
