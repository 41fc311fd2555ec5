package clenchbook.workload.hours;

import clenchbook.texts.Message;
import java.util.EnumSet;
import java.util.Set;

/** The measures of hours, by the names under which the figures list them. */
public enum HoursMeasure {
  /** Trimming and nailing. */
  UNDER_THE_HORSE(
      "hours under the horse",
      "workload.hours.underTheHorse",
      "workload.hours.underTheHorseShort",
      Activity.TRIM,
      Activity.NAIL),
  /** Shaping hot. */
  AT_THE_ANVIL(
      "hours at the anvil",
      "workload.hours.atTheAnvil",
      "workload.hours.atTheAnvilShort",
      Activity.SHAPE_HOT),
  /** Shaping cold. */
  AT_THE_STALL_JACK(
      "hours at the stall jack",
      "workload.hours.atTheStallJack",
      "workload.hours.atTheStallJackShort",
      Activity.SHAPE_COLD),
  /** Making shoes. */
  MAKING("hours making", "workload.hours.making", "workload.hours.makingShort", Activity.MAKE),
  /** Grinding. */
  GRINDING(
      "hours grinding", "workload.hours.grinding", "workload.hours.grindingShort", Activity.GRIND),
  /** Setting the forge up. */
  SETTING_UP(
      "hours setting up",
      "workload.hours.settingUp",
      "workload.hours.settingUpShort",
      Activity.SET_UP),
  /** Driving. */
  DRIVING("hours driving", "workload.hours.driving", "workload.hours.drivingShort", Activity.DRIVE),
  /** Everything. */
  IN_ALL("hours in all", "workload.hours.inAll", "workload.hours.inAllShort", Activity.values());

  private final String measure;
  private final Message title;
  private final Message shortTitle;
  private final Set<Activity> activities;

  HoursMeasure(String measure, String titleKey, String shortKey, Activity... activities) {
    this.measure = measure;
    this.title = Message.of(titleKey);
    this.shortTitle = Message.of(shortKey);
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
   * The name on the pages.
   *
   * @return such as {@code hours at the anvil}
   */
  public Message title() {
    return title;
  }

  /**
   * The name on the pages where it is plain that hours are meant.
   *
   * @return such as {@code at the anvil}
   */
  public Message shortTitle() {
    return shortTitle;
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
