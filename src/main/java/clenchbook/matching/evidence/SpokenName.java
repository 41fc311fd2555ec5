package clenchbook.matching.evidence;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A name as its words, and how it compares with an owner's name.
 *
 * @param written the name as written
 * @param words its words, in order
 * @param set the same without repeats
 * @param marks a bit for each word, one of 64 by the word's number: where a bit is missing, so is
 *     the word, which spares looking for it
 */
record SpokenName(String written, List<String> words, Set<String> set, long marks) {
  private static final int CUT_AT = 20;
  private static final int SPREAD = 0x9E3779B9;
  private static final int TO_64 = 26;

  static SpokenName of(String written) {
    List<String> words = PayerName.words(written);
    long marks = 0;
    for (String word : words) {
      marks |= mark(word);
    }
    return new SpokenName(written, words, new LinkedHashSet<>(words), marks);
  }

  private static long mark(String word) {
    return 1L << ((word.hashCode() * SPREAD) >>> TO_64);
  }

  /** Whether it has every word of another. */
  boolean holds(SpokenName other) {
    return (other.marks & ~marks) == 0 && set.containsAll(other.set);
  }

  /** Whether it has every word of another once one of its words is corrected. */
  boolean holds(SpokenName other, String slip, String meant) {
    if ((other.marks & ~(marks | mark(meant))) != 0) {
      return false;
    }
    for (String word : other.words) {
      boolean there = word.equals(meant) || (!word.equals(slip) && set.contains(word));
      if (!there) {
        return false;
      }
    }
    return true;
  }

  /** Banks cut long names: all words stand there, the last one only by its beginning. */
  boolean isCutFrom(SpokenName whole) {
    int last = words.size() - 1;
    if (written.length() < CUT_AT || last < 1 || words.size() > whole.words.size()) {
      return false;
    }
    for (int place = 0; place < last; place++) {
      if (!whole.words.get(place).equals(words.get(place))) {
        return false;
      }
    }
    return whole.words.get(last).startsWith(words.get(last));
  }

  boolean hasInitial() {
    for (String word : words) {
      if (word.length() == 1) {
        return true;
      }
    }
    return false;
  }

  /** One whole word of another name, and each other word of it by its first letter. */
  boolean abbreviates(SpokenName other) {
    if (other.words.size() < 2) {
      return false;
    }
    boolean whole = false;
    boolean initial = false;
    for (String word : other.words) {
      if (word.length() > 2 && words.contains(word)) {
        whole = true;
      } else if (words.contains(word.substring(0, 1))) {
        initial = true;
      } else {
        return false;
      }
    }
    return whole && initial;
  }
}
