package clenchbook.jobs;

import clenchbook.problem.NearestName;
import clenchbook.texts.Message;
import java.util.Collection;

/** What to say beside a name that is not known. */
public final class VisitNames {
  private VisitNames() {}

  /**
   * What was expected, with the nearest known name as a question.
   *
   * @param expected what was expected
   * @param unknown the name as written
   * @param names the known ones
   * @return {@code a name from there (did you mean …?)}; only what was expected when none is near
   */
  public static Message offer(Message expected, String unknown, Collection<String> names) {
    return NearestName.find(unknown, names)
        .map(name -> Message.of("jobs.name.nearest", expected, name))
        .orElse(expected);
  }
}
