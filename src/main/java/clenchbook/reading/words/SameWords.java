package clenchbook.reading.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** When two headings, sheet names or choices are the same words. */
public final class SameWords {
  private static final List<String> MINUTES = List.of("min", "mins", "minute", "minutes", "time");

  private SameWords() {}

  /** The letters and digits, small, without accents, spaces and punctuation. */
  public static String bare(String words) {
    String text = isAscii(words) ? words : Normalizer.normalize(words, Normalizer.Form.NFKD);
    StringBuilder kept = new StringBuilder(text.length());
    text.codePoints().filter(Character::isLetterOrDigit).forEach(kept::appendCodePoint);
    return kept.toString().toLowerCase(Locale.ROOT).replace("ß", "ss");
  }

  private static boolean isAscii(String words) {
    return words.chars().allMatch(c -> c < 128);
  }

  /** All bare forms of a heading: one that ends in "min" may end in "minutes" or the like. */
  public static Set<String> forms(String heading) {
    List<String> forms = new ArrayList<>(List.of(bare(heading)));
    if (heading.endsWith(" min")) {
      String base = bare(heading.substring(0, heading.length() - 4));
      MINUTES.forEach(minutes -> forms.add(base + minutes));
    }
    return Set.copyOf(forms);
  }
}
