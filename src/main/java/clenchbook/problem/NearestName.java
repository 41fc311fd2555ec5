package clenchbook.problem;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Offers the known name a misspelt one most likely stands for: "Brambel: did you mean Bramble?".
 *
 * <p>Names are compared without case, accents, spaces and punctuation. The distance is the number
 * of letters added, dropped, changed or swapped with their neighbour (the "optimal string
 * alignment" form of Damerau's and Levenshtein's distance). A name further away than a third of its
 * letters is no offer.
 */
public final class NearestName {
  private NearestName() {}

  /**
   * Finds the nearest known name.
   *
   * @param unknown the name as found; blank gives no offer
   * @param known the names there are, in any order
   * @return the nearest one as it is written in {@code known}; of several equally near, the first
   *     in code point order; empty when none is near
   */
  public static Optional<String> find(String unknown, Collection<String> known) {
    String wanted = bare(unknown);
    int limit = Math.min(3, Math.max(1, wanted.length() / 3));
    String best = null;
    int bestDistance = limit + 1;
    for (String candidate : known) {
      int distance = distance(wanted, bare(candidate), limit);
      boolean nearer = distance < bestDistance;
      boolean earlier = distance == bestDistance && best != null && candidate.compareTo(best) < 0;
      if (nearer || earlier) {
        best = candidate;
        bestDistance = distance;
      }
    }
    return wanted.isEmpty() ? Optional.empty() : Optional.ofNullable(best);
  }

  /** The letters and digits of a name, small, without accents. */
  static String bare(String name) {
    String parted = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    StringBuilder kept = new StringBuilder(parted.length());
    parted.codePoints().filter(Character::isLetterOrDigit).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  /** The distance of two bare names, or any number above {@code limit} when they are further. */
  static int distance(String a, String b, int limit) {
    if (Math.abs(a.length() - b.length()) > limit) {
      return limit + 1;
    }
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        row[j] = step(a, b, i, j, row, last, before);
      }
      before = last;
      last = row;
    }
    return last[b.length()];
  }

  private static int step(String a, String b, int i, int j, int[] row, int[] last, int[] before) {
    int changed = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int least = Math.min(changed, Math.min(last[j], row[j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, before[j - 2] + 1) : least;
  }
}
