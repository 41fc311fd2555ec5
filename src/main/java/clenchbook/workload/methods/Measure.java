package clenchbook.workload.methods;

import clenchbook.book.Task;
import clenchbook.workload.hours.Phrase;
import java.util.Optional;

/**
 * What is measured: a method, or a method's score of one task.
 *
 * @param name its name in the figures and on the pages
 * @param task the task that it is about; empty where it is about the whole day
 */
public record Measure(Phrase name, Optional<Task> task) implements Comparable<Measure> {

  /**
   * A measure of the whole day.
   *
   * @param name its name
   * @return the measure
   */
  public static Measure of(Phrase name) {
    return new Measure(name, Optional.empty());
  }

  /**
   * A method's measure of one task.
   *
   * @param method the method
   * @param task the task
   * @return the measure, named by both
   */
  public static Measure of(Method method, Task task) {
    Phrase name = method.name();
    return new Measure(
        Phrase.of(
            name.english() + ", " + task.word(),
            "workload.measure.ofTask",
            name.said(),
            TaskName.of(task)),
        Optional.of(task));
  }

  /** By the name in the figures, so that the order is the same in every language. */
  @Override
  public int compareTo(Measure other) {
    return name.english().compareTo(other.name.english());
  }
}
