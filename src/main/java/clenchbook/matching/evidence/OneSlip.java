package clenchbook.matching.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds words that differ from a given one by one slip: a sign too many, too few or wrong, or two
 * neighbours swapped. Each word is kept under all that is left of it when one sign is taken out, so
 * that a search costs as many steps as the word has signs.
 *
 * @param <T> what a word stands for
 */
final class OneSlip<T> {
  private record Kept<T>(String word, T meaning) {}

  private final Map<String, List<Kept<T>>> byRest = new HashMap<>();

  void add(String word, T meaning) {
    Kept<T> kept = new Kept<>(word, meaning);
    for (String rest : rests(word)) {
      byRest.computeIfAbsent(rest, unused -> new ArrayList<>(1)).add(kept);
    }
  }

  /** What the words one slip away stand for, in the order they were added; not the word itself. */
  Set<T> near(String word) {
    Set<T> near = new java.util.LinkedHashSet<>();
    for (String rest : rests(word)) {
      for (Kept<T> kept : byRest.getOrDefault(rest, List.of())) {
        if (!kept.word.equals(word) && isOneSlip(word, kept.word)) {
          near.add(kept.meaning);
        }
      }
    }
    return near;
  }

  private static Set<String> rests(String word) {
    Set<String> rests = new HashSet<>();
    rests.add(word);
    for (int at = 0; at < word.length(); at++) {
      rests.add(word.substring(0, at) + word.substring(at + 1));
    }
    return rests;
  }

  /** Whether two different words are one slip apart. */
  static boolean isOneSlip(String one, String other) {
    int shorter = Math.min(one.length(), other.length());
    int at = 0;
    while (at < shorter && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    String a = one.substring(at);
    String b = other.substring(at);
    if (a.length() == b.length()) {
      boolean swapped =
          a.length() > 1
              && a.charAt(0) == b.charAt(1)
              && a.charAt(1) == b.charAt(0)
              && a.substring(2).equals(b.substring(2));
      return a.isEmpty() || swapped || a.substring(1).equals(b.substring(1));
    }
    return a.length() > b.length()
        ? a.length() == b.length() + 1 && a.substring(1).equals(b)
        : b.length() == a.length() + 1 && b.substring(1).equals(a);
  }
}
