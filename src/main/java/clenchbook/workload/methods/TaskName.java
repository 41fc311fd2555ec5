package clenchbook.workload.methods;

import clenchbook.book.Task;
import clenchbook.texts.Message;

/** What a task is called on the pages. */
public final class TaskName {
  private TaskName() {}

  /**
   * The name of a task.
   *
   * @param task the task
   * @return such as {@code shape hot}
   */
  public static Message of(Task task) {
    return switch (task) {
      case TRIM -> Message.of("workload.task.trim");
      case SHAPE_HOT -> Message.of("workload.task.shapeHot");
      case SHAPE_COLD -> Message.of("workload.task.shapeCold");
      case NAIL -> Message.of("workload.task.nail");
      case MAKE -> Message.of("workload.task.make");
      case GRIND -> Message.of("workload.task.grind");
      case DRIVE -> Message.of("workload.task.drive");
    };
  }
}
