package clenchbook.reading.words;

import java.util.Set;
import java.util.stream.Collectors;

/** The words that begin a row of totals. */
public final class TotalsWords {
  private static final Set<String> WORDS =
      WordLists.section("totals").stream()
          .flatMap(line -> WordLists.split(line.key()).stream())
          .map(SameWords::bare)
          .collect(Collectors.toUnmodifiableSet());

  private TotalsWords() {}

  /** Whether a text is a word for a total, or begins with one. */
  public static boolean says(String text) {
    String first = text.strip().split("[\\s:=]", 2)[0];
    return WORDS.contains(SameWords.bare(text)) || WORDS.contains(SameWords.bare(first));
  }
}
