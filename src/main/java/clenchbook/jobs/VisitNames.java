package clenchbook.jobs;

import clenchbook.problem.NearestName;
import java.util.Collection;

/** What to say beside a name that is not known. */
public final class VisitNames {
  private VisitNames() {}

  /**
   * The nearest known name as a question.
   *
   * @param unknown the name as written
   * @param names the known ones
   * @return {@code " (did you mean …?)"}; empty when none is near
   */
  public static String offer(String unknown, Collection<String> names) {
    return NearestName.find(unknown, names).map(name -> " (did you mean " + name + "?)").orElse("");
  }
}
