package clenchbook.reading.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Small numbers written as words. */
public final class NumberWords {
  /** Read when a text is first asked about that holds no figure. */
  private static final class Loaded {
    static final Map<String, Integer> NUMBERS = numbers();
  }

  private NumberWords() {}

  private static Map<String, Integer> numbers() {
    Map<String, Integer> numbers = new HashMap<>();
    for (WordLists.Line line : WordLists.section("numbers")) {
      int number = Integer.parseInt(line.key());
      line.words().forEach(word -> numbers.putIfAbsent(SameWords.bare(word), number));
    }
    return Map.copyOf(numbers);
  }

  /** The number that a text names, 0 to 12; empty for any other text. */
  public static Optional<Integer> find(String text) {
    return text.length() > 20 || text.chars().anyMatch(Character::isDigit)
        ? Optional.empty()
        : Optional.ofNullable(Loaded.NUMBERS.get(SameWords.bare(text)));
  }
}
