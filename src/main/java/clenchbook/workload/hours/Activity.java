package clenchbook.workload.hours;

import clenchbook.book.Task;
import java.util.Optional;

/** What an hour of work goes into. */
public enum Activity {
  /** Trimming, bent under the horse. */
  TRIM(Task.TRIM),
  /** Nailing and clenching, bent under the horse. */
  NAIL(Task.NAIL),
  /** Shaping hot at the anvil. */
  SHAPE_HOT(Task.SHAPE_HOT),
  /** Shaping cold at the stall jack. */
  SHAPE_COLD(Task.SHAPE_COLD),
  /** Making shoes from bar. */
  MAKE(Task.MAKE),
  /** Grinding. */
  GRIND(Task.GRIND),
  /** Setting the forge up at a stop; no task of its own in the ratings. */
  SET_UP(),
  /** Driving on business. */
  DRIVE(Task.DRIVE);

  private final Optional<Task> task;

  Activity(Task task) {
    this.task = Optional.of(task);
  }

  Activity() {
    this.task = Optional.empty();
  }

  /**
   * The task under which the farrier rates it.
   *
   * @return empty for setting up, which is not rated
   */
  public Optional<Task> task() {
    return task;
  }

  /**
   * The activity of a task.
   *
   * @param task a rated task
   * @return its activity
   */
  public static Activity of(Task task) {
    return valueOf(task.name());
  }
}
