package clenchbook.reading.words;

import java.util.Set;
import java.util.stream.Collectors;

/** The words that begin a row of totals. */
public final class TotalsWords {
  /** Read when a text is first asked about that is no number or day. */
  private static final class Loaded {
    static final Set<String> WORDS =
        WordLists.section("totals").stream()
            .flatMap(line -> WordLists.split(line.key()).stream())
            .map(SameWords::bare)
            .collect(Collectors.toUnmodifiableSet());
  }

  private TotalsWords() {}

  /** Whether a text is a word for a total, or begins with one. */
  public static boolean says(String text) {
    if (text.isEmpty() || Character.isDigit(text.charAt(0))) {
      return false;
    }
    String first = text.strip().split("[\\s:=]", 2)[0];
    return Loaded.WORDS.contains(SameWords.bare(text))
        || Loaded.WORDS.contains(SameWords.bare(first));
  }
}
