package clenchbook.workload.strain;

import clenchbook.book.StrainRating;
import clenchbook.book.Task;
import clenchbook.workload.hours.Activity;
import clenchbook.workload.hours.Load;
import clenchbook.workload.hours.ShoeTally;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** The farrier's ratings of all tasks. */
public final class Ratings {

  private final Map<Task, TaskRating> tasks = new EnumMap<>(Task.class);

  /**
   * Ratings from the Strain sheet.
   *
   * @param rows its rows, in row order; empty when there is no such sheet
   */
  public Ratings(List<StrainRating> rows) {
    for (Task task : Task.values()) {
      tasks.put(task, TaskRating.of(task, rows));
    }
  }

  /**
   * The rating of a task.
   *
   * @param task which
   * @return its rating; everything in it may be empty
   */
  public TaskRating of(Task task) {
    TaskRating rating = tasks.get(task);
    if (rating == null) {
      throw new IllegalArgumentException("no such task: " + task);
    }
    return rating;
  }

  /**
   * The tasks of which something is rated.
   *
   * @param rated what must be there
   * @return in the order of the tasks
   */
  public List<TaskRating> where(Predicate<TaskRating> rated) {
    return tasks.values().stream().filter(rated).toList();
  }

  /**
   * The activities with time but without some rating.
   *
   * @param load the work
   * @param rated the rating looked for
   * @return tasks, in order
   */
  public List<Task> unrated(Load load, Predicate<TaskRating> rated) {
    List<Task> unrated = new ArrayList<>();
    for (Task task : Task.values()) {
      boolean worked = load.minutes(Activity.of(task)).total() > 0;
      if (worked && !rated.test(of(task))) {
        unrated.add(task);
      }
    }
    return unrated;
  }

  /**
   * Hammer blows for so many shoes: hot and cold ones by their own rating, nailing, trimming and
   * grinding per shoe nailed on, making per shoe made. Driving has none.
   *
   * @param shoes nailed on and made
   * @return blows; empty when no task has a Blows per shoe
   */
  public OptionalDouble blows(ShoeTally shoes) {
    if (!ratesBlows()) {
      return OptionalDouble.empty();
    }
    double blows =
        shoes.hot() * perShoe(Task.SHAPE_HOT)
            + shoes.cold() * perShoe(Task.SHAPE_COLD)
            + shoes.made() * perShoe(Task.MAKE)
            + shoes.nailed() * (perShoe(Task.NAIL) + perShoe(Task.TRIM) + perShoe(Task.GRIND));
    return OptionalDouble.of(blows);
  }

  /** Whether any task that is hammer work has its blows counted. */
  public boolean ratesBlows() {
    return !where(rating -> rating.task() != Task.DRIVE && rating.blowsPerShoe().isPresent())
        .isEmpty();
  }

  private double perShoe(Task task) {
    return of(task).blowsPerShoe().orElse(0);
  }
}
