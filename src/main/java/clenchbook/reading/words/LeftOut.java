package clenchbook.reading.words;

import java.util.Set;
import java.util.stream.Collectors;

/** Headings of columns that a farrier's visits often have and that the program does not need. */
public final class LeftOut {
  private static final Set<String> HARMLESS = words("Visits");
  private static final Set<String> BALANCE = words("balance");

  private LeftOut() {}

  private static Set<String> words(String key) {
    return WordLists.section("left out").stream()
        .filter(line -> line.key().equals(key))
        .flatMap(line -> line.words().stream())
        .map(SameWords::bare)
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Whether a heading names something that is neither money nor minutes, such as a week. */
  public static boolean isHarmless(String heading) {
    return HARMLESS.contains(SameWords.bare(heading));
  }

  /** Whether a heading names what is still owed. */
  public static boolean isBalance(String heading) {
    return BALANCE.contains(SameWords.bare(heading));
  }
}
