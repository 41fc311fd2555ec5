package clenchbook.reading.proposal;

import clenchbook.problem.NearestName;
import clenchbook.reading.words.GuessWords;
import clenchbook.reading.words.SameWords;
import java.util.List;
import java.util.Set;

/**
 * How much a heading is like a known word, in points: the whole words, letters apart, shortened
 * forms, and parts of several words.
 */
final class Likeness {
  /** The same word. */
  static final int SAME = 36;

  private static final int MOST_LETTERS = 40;
  private static final Set<String> SMALL =
      Set.of(
          "of", "the", "a", "in", "per", "for", "der", "die", "das", "des", "von", "am", "pro",
          "de", "du", "la", "le", "les", "par", "en", "el", "los", "las", "del", "por", "van",
          "het", "it", "my", "mein", "meine", "mon", "mi", "mijn", "our");
  private static final Set<String> MINUTES =
      Set.of("mins", "minute", "minutes", "minuten", "minutos");

  private Likeness() {}

  /** A text prepared for comparing. */
  record Word(String bare, List<String> parts) {
    static Word of(String text) {
      int bracket = text.indexOf('(');
      String words = bracket > 0 ? text.substring(0, bracket) : text;
      List<String> parts =
          GuessWords.parts(words).stream()
              .filter(part -> !SMALL.contains(part))
              .map(part -> MINUTES.contains(part) ? "min" : part)
              .toList();
      return new Word(SameWords.writtenOut(words), parts);
    }
  }

  /** The points for a heading and a known word; 0 where they have nothing in common. */
  static int points(Word heading, Word known) {
    if (heading.bare().isEmpty() || known.bare().isEmpty()) {
      return 0;
    }
    if (heading.bare().length() > MOST_LETTERS || known.bare().length() > MOST_LETTERS) {
      return 0;
    }
    boolean several = heading.parts().size() > 1 || known.parts().size() > 1;
    if (!several) {
      return letters(heading.bare(), known.bare());
    }
    boolean same = heading.bare().equals(known.bare());
    int whole = same ? SAME : misspelt(heading.bare(), known.bare());
    return Math.max(whole, parts(heading.parts(), known.parts()));
  }

  /** Two words as wholes. */
  private static int letters(String heading, String known) {
    if (heading.equals(known)) {
      return SAME;
    }
    return Math.max(misspelt(heading, known), shortened(heading, known));
  }

  private static int misspelt(String heading, String known) {
    int length = Math.min(heading.length(), known.length());
    if (length < 3 || Math.abs(heading.length() - known.length()) > 2) {
      return 0;
    }
    int distance = NearestName.distance(heading, known, 2);
    if (distance == 1) {
      return length >= 6 ? 32 : length == 5 ? 27 : length == 4 ? 18 : 8;
    }
    if (distance == 2) {
      return length >= 8 ? 26 : length >= 6 ? 16 : 0;
    }
    return 0;
  }

  private static int shortened(String heading, String known) {
    int length = heading.length();
    if (length >= known.length()) {
      return 0;
    }
    if (known.startsWith(heading)) {
      return length >= 5 ? 26 : length == 4 ? 22 : length == 3 ? 17 : length == 2 ? 9 : 4;
    }
    boolean sameStart = heading.charAt(0) == known.charAt(0);
    if (sameStart && length >= 2 && heading.equals(withoutVowels(known))) {
      return length >= 4 ? 24 : length == 3 ? 20 : 10;
    }
    boolean spans = length * 3 >= known.length() && isWithin(heading, known);
    return sameStart && spans ? (length >= 4 ? 14 : length == 3 ? 9 : 4) : 0;
  }

  private static String withoutVowels(String word) {
    return word.charAt(0) + word.substring(1).replaceAll("[aeiouy]", "");
  }

  /** Whether the letters of one stand in the other in their order. */
  private static boolean isWithin(String few, String many) {
    int at = 0;
    for (int i = 0; i < many.length() && at < few.length(); i++) {
      at += many.charAt(i) == few.charAt(at) ? 1 : 0;
    }
    return at == few.length();
  }

  /** Words of several parts: what they share, of all that they have. */
  private static int parts(List<String> heading, List<String> known) {
    int shared = 0;
    int matched = 0;
    for (String part : known) {
      int best = heading.stream().mapToInt(own -> letters(own, part)).max().orElse(0);
      shared += best;
      matched += best > 0 ? 1 : 0;
    }
    int all = heading.size() + known.size() - matched;
    return all == 0 ? 0 : Math.min(SAME - 2, shared / all);
  }
}
