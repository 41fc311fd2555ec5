package clenchbook.matching.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds words that differ from a given one by one slip: a sign too many, too few or wrong, or two
 * neighbours swapped. Two such words leave the same rest when one sign is taken out of either (or
 * of one alone). Each word is therefore noted under a number for each of its rests, in one sorted
 * row of numbers; a search works out the numbers of a word's own rests as it goes along it, looks
 * each up, and compares the few words found there sign by sign. Nothing is built where nothing is
 * near.
 *
 * @param <T> what a word stands for
 */
final class OneSlip<T> {
  private static final int FACTOR = 31;

  private final List<String> words = new ArrayList<>();
  private final List<T> meanings = new ArrayList<>();
  private long[] notes = new long[64];
  private int noted;
  private boolean sorted = true;

  void add(String word, T meaning) {
    int place = words.size();
    words.add(word);
    meanings.add(meaning);
    for (int without = -1; without < word.length(); without++) {
      if (noted == notes.length) {
        notes = Arrays.copyOf(notes, noted * 2);
      }
      notes[noted] = note(restNumber(word, without), place);
      noted++;
    }
    sorted = false;
  }

  /** What the words one slip away stand for, in the order they were added; not the word itself. */
  Set<T> near(String word) {
    if (!sorted) {
      Arrays.sort(notes, 0, noted);
      sorted = true;
    }
    int[] places = new int[0];
    for (int without = -1; without < word.length(); without++) {
      places = nearBy(word, restNumber(word, without), places);
    }
    if (places.length == 0) {
      return Set.of();
    }
    Arrays.sort(places);
    Set<T> near = new LinkedHashSet<>();
    for (int place : places) {
      near.add(meanings.get(place));
    }
    return near;
  }

  private int[] nearBy(String word, int rest, int[] places) {
    int[] more = places;
    for (int at = first(rest); at < noted && (int) (notes[at] >> 32) == rest; at++) {
      int place = (int) notes[at];
      String other = words.get(place);
      if (!other.equals(word) && isOneSlip(word, other)) {
        more = Arrays.copyOf(more, more.length + 1);
        more[more.length - 1] = place;
      }
    }
    return more;
  }

  /** The first note that is not below the given rest's. */
  private int first(int rest) {
    int found = Arrays.binarySearch(notes, 0, noted, note(rest, 0));
    return found < 0 ? -found - 1 : found;
  }

  private static long note(int rest, int place) {
    return (long) rest << 32 | place;
  }

  /**
   * A number for a word without one of its signs, or for all of it; equal rests have equal ones.
   */
  private static int restNumber(String word, int without) {
    int number = 0;
    for (int at = 0; at < word.length(); at++) {
      number = at == without ? number : FACTOR * number + word.charAt(at);
    }
    return number;
  }

  /** Whether two different words are one slip apart. */
  static boolean isOneSlip(String one, String other) {
    int longer = Math.max(one.length(), other.length());
    int shorter = Math.min(one.length(), other.length());
    int at = 0;
    while (at < shorter && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    if (longer - shorter > 1) {
      return false;
    }
    if (longer > shorter) {
      String more = one.length() > other.length() ? one : other;
      String less = one.length() > other.length() ? other : one;
      return more.regionMatches(at + 1, less, at, shorter - at);
    }
    boolean wrong = one.regionMatches(at + 1, other, at + 1, shorter - at - 1);
    boolean swapped =
        at + 1 < shorter
            && one.charAt(at) == other.charAt(at + 1)
            && one.charAt(at + 1) == other.charAt(at)
            && one.regionMatches(at + 2, other, at + 2, shorter - at - 2);
    return at == shorter || wrong || swapped;
  }
}
