package clenchbook.commands.mailing;

import clenchbook.book.Names;
import clenchbook.commands.opening.RunFault;
import clenchbook.problem.NearestName;
import clenchbook.texts.Message;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The owners whose mail the farrier wants to go off again, whatever became of it. */
public final class RepeatedMail {
  private final Set<String> keys;
  private final Set<String> asked;

  /**
   * The owners named on the command line, ignoring case.
   *
   * @param owners as they were typed
   */
  public RepeatedMail(Set<String> owners) {
    this.asked = Set.copyOf(owners);
    this.keys = owners.stream().map(Names::key).collect(Collectors.toUnmodifiableSet());
  }

  boolean isAsked(String owner) {
    return keys.contains(Names.key(owner));
  }

  /**
   * Makes sure that each name is one that has a mail.
   *
   * @throws RunFault where one is not, offering the nearest that is
   */
  void check(Collection<String> owners) {
    Set<String> known = owners.stream().map(Names::key).collect(Collectors.toSet());
    for (String name : asked.stream().sorted().toList()) {
      if (!known.contains(Names.key(name))) {
        Optional<String> nearest = NearestName.find(name, owners);
        throw new RunFault(
            nearest
                .map(near -> Message.of("commands.mail.againNear", name, near))
                .orElseGet(() -> Message.of("commands.mail.againUnknown", name)));
      }
    }
  }
}
