package clenchbook.reading.words;

import java.util.Set;
import java.util.stream.Collectors;

/** The words that make a row one of totals. */
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

  /** Whether a text is a word for a total, or begins or ends with one. */
  public static boolean says(String text) {
    if (text.isEmpty() || Character.isDigit(text.charAt(0))) {
      return false;
    }
    String[] words = text.strip().split("[\\s:=]+");
    return words.length > 0 && (isOne(text) || isOne(words[0]) || isOne(words[words.length - 1]));
  }

  private static boolean isOne(String word) {
    return Loaded.WORDS.contains(SameWords.bare(word));
  }
}
