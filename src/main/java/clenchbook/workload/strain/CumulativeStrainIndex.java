package clenchbook.workload.strain;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.Score;
import java.util.ArrayList;
import java.util.List;

/**
 * The Cumulative Strain Index (CUSI): all the tasks of a day over their real hours.
 *
 * <p>The tasks stand in falling order of their composite index; each later one adds what its hours
 * add on top of the hours before it. Same source as {@link CompositeStrainIndex}.
 */
public final class CumulativeStrainIndex {

  /** What the index is and what it leaves out. */
  public static final Method METHOD =
      new Method(
          Phrase.of("Cumulative Strain Index (CUSI)", "workload.cusi"),
          CompositeStrainIndex.METHOD.edition(),
          Message.of("workload.cusi.range"),
          RevisedStrainIndex.METHOD.notCovered());

  private CumulativeStrainIndex() {}

  /**
   * One task of the day.
   *
   * @param efforts the kinds of hand effort in it, at least one
   * @param hours spent on it that day
   */
  public record TaskHours(List<HandEffort> efforts, double hours) {
    /** Copies the list. */
    public TaskHours {
      efforts = List.copyOf(efforts);
    }
  }

  /**
   * The index of a day.
   *
   * @param tasks of the day, at least one, in any order
   * @return the index, not rounded, or which input lies outside the range
   * @throws IllegalArgumentException when there is no task
   */
  public static Score of(List<TaskHours> tasks) {
    if (tasks.isEmpty()) {
      throw new IllegalArgumentException("a day has at least one task");
    }
    List<StackedEfforts.Part> parts = new ArrayList<>();
    double hours = 0;
    for (TaskHours task : tasks) {
      Score composite = CompositeStrainIndex.of(task.efforts(), task.hours());
      if (composite.number().isEmpty()) {
        return composite;
      }
      double alone = composite.number().getAsDouble();
      double weight = alone / RevisedStrainIndex.hoursMultiplier(task.hours());
      parts.add(new StackedEfforts.Part(alone, task.hours(), weight));
      hours += task.hours();
    }
    return hours > 24
        ? new Score.OutOfRange(
            Phrase.of(
                Digits.plain(hours) + " hours of tasks in one day",
                "workload.fault.taskHours",
                Digits.rounded(hours, 2)))
        : Score.of(StackedEfforts.sum(parts, RevisedStrainIndex::hoursMultiplier));
  }
}
