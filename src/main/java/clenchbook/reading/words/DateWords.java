package clenchbook.reading.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The words that stand in dates: months, weekdays, and small words between. */
public final class DateWords {
  private static final int SHORTEST_MONTH = 3;

  /** Short forms of months that are English words, too. */
  private static final Set<String> ORDINARY = Set.of("set", "out", "ago");

  private static final Map<String, Integer> MONTHS = months();
  private static final Set<String> WEEKDAYS = all("weekdays");
  private static final Set<String> FILLERS = all("fillers");

  private DateWords() {}

  private static Map<String, Integer> months() {
    Map<String, Integer> months = new HashMap<>();
    for (WordLists.Line line : WordLists.section("dates")) {
      if (line.key().equals("months")) {
        List<String> names = line.words();
        for (int month = 0; month < names.size(); month++) {
          for (String name : names.get(month).split(" ")) {
            months.putIfAbsent(SameWords.bare(name), month + 1);
          }
        }
      }
    }
    return Map.copyOf(months);
  }

  private static Set<String> all(String key) {
    List<String> words = new ArrayList<>();
    WordLists.section("dates").stream()
        .filter(line -> line.key().equals(key))
        .flatMap(line -> line.words().stream())
        .forEach(word -> words.addAll(List.of(word.split(" "))));
    Set<String> bare = new HashSet<>();
    words.forEach(word -> bare.add(SameWords.bare(word)));
    return Set.copyOf(bare);
  }

  /**
   * The month that a word names, whole or cut short: its first three letters or more.
   *
   * @return 1 to 12; empty for any other word
   */
  public static Optional<Integer> month(String word) {
    String bare = SameWords.bare(word);
    Integer exact = MONTHS.get(bare);
    if (exact != null) {
      return Optional.of(exact);
    }
    if (bare.length() < SHORTEST_MONTH || isWeekday(word)) {
      return Optional.empty();
    }
    return cutShort(bare).or(() -> misspelt(bare));
  }

  /**
   * The month of a name that stands among other words: whole or in its usual short form, and no
   * word of its own.
   */
  public static Optional<Integer> monthByName(String word) {
    String bare = SameWords.bare(word);
    return Optional.ofNullable(MONTHS.get(bare)).filter(month -> !ORDINARY.contains(bare));
  }

  private static Optional<Integer> cutShort(String bare) {
    List<Integer> months =
        MONTHS.entrySet().stream()
            .filter(month -> month.getKey().startsWith(bare))
            .map(Map.Entry::getValue)
            .distinct()
            .toList();
    return months.size() == 1 ? Optional.of(months.get(0)) : Optional.empty();
  }

  /** A word that at least begins as a month's short form does. */
  private static Optional<Integer> misspelt(String bare) {
    for (int length = Math.min(5, bare.length()); length >= SHORTEST_MONTH; length--) {
      Integer month = MONTHS.get(bare.substring(0, length));
      if (month != null) {
        return Optional.of(month);
      }
    }
    return Optional.empty();
  }

  /** Whether a word names a day of the week, whole or cut short. */
  public static boolean isWeekday(String word) {
    return WEEKDAYS.contains(SameWords.bare(word));
  }

  /** Whether a word may stand in a date without a meaning of its own. */
  public static boolean isFiller(String word) {
    return FILLERS.contains(word.toLowerCase(Locale.ROOT));
  }
}
