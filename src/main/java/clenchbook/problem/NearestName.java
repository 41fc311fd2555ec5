package clenchbook.problem;

import java.text.Normalizer;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;
import org.apache.commons.text.similarity.SimilarityInput;

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
   *     in code point order; empty when none is near, or one is the name itself but for case,
   *     accents and spaces, which would be no help
   */
  public static Optional<String> find(String unknown, Collection<String> known) {
    String itself = unspaced(unknown);
    boolean there = known.stream().anyMatch(candidate -> unspaced(candidate).equals(itself));
    return there ? Optional.empty() : findSpelled(unknown, known);
  }

  /** The nearest known word where case counts, so that one that differs in it alone is a help. */
  public static Optional<String> findSpelled(String unknown, Collection<String> known) {
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

  /** A name, small, without accents and spaces. */
  private static String unspaced(String name) {
    String parted = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    StringBuilder kept = new StringBuilder(parted.length());
    parted
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c))
        .forEach(kept::appendCodePoint);
    return kept.toString();
  }

  /** The letters and digits of a name, small, without accents. */
  static String bare(String name) {
    String parted = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    StringBuilder kept = new StringBuilder(parted.length());
    parted.codePoints().filter(Character::isLetterOrDigit).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  /**
   * How many letters two bare names are apart.
   *
   * @param a small letters and digits
   * @param b likewise
   * @param limit how far is looked
   * @return the distance, or any number above {@code limit} when they are further
   */
  public static int distance(String a, String b, int limit) {
    int distance =
        new DamerauLevenshteinDistance(limit).apply(Letters.of(a), Letters.of(b)).intValue();
    return distance < 0 ? limit + 1 : distance;
  }

  /**
   * The letters of a bare name, each the same object wherever it stands: the library compares them
   * by identity, which its own characters beyond ASCII don't have.
   */
  private record Letters(List<String> letters) implements SimilarityInput<String> {
    static Letters of(String name) {
      return new Letters(
          name.codePoints().mapToObj(Character::toString).map(String::intern).toList());
    }

    @Override
    public String at(int index) {
      return letters.get(index);
    }

    @Override
    public int length() {
      return letters.size();
    }
  }
}
