package clenchbook.reading.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** When two headings, sheet names or choices are the same words. */
public final class SameWords {
  private static final List<String> MINUTES =
      List.of("min", "mins", "minute", "minutes", "time", "minuten", "minutos");

  private SameWords() {}

  /** The letters and digits, small, without accents, spaces and punctuation. */
  public static String bare(String words) {
    String text = isAscii(words) ? words : Normalizer.normalize(words, Normalizer.Form.NFKD);
    StringBuilder kept = new StringBuilder(text.length());
    text.codePoints().filter(Character::isLetterOrDigit).forEach(kept::appendCodePoint);
    return kept.toString().toLowerCase(Locale.ROOT).replace("ß", "ss");
  }

  /**
   * The bare words with German umlauts written out: some words differ in nothing else, as "Nagel"
   * and "Nägel".
   */
  public static String writtenOut(String words) {
    if (isAscii(words)) {
      return bare(words);
    }
    StringBuilder text = new StringBuilder(words.length() + 2);
    for (char c : Normalizer.normalize(words, Normalizer.Form.NFC).toCharArray()) {
      switch (c) {
        case 'ä', 'Ä' -> text.append("ae");
        case 'ö', 'Ö' -> text.append("oe");
        case 'ü', 'Ü' -> text.append("ue");
        default -> text.append(c);
      }
    }
    return bare(text.toString());
  }

  private static boolean isAscii(String words) {
    return words.chars().allMatch(c -> c < 128);
  }

  /**
   * All bare forms of a heading: one that ends in "min" may end in "minutes" or the like. Umlauts
   * are written out; that they may also be left out is for who looks a word up.
   */
  public static Set<String> forms(String heading) {
    List<String> forms = new ArrayList<>(List.of(writtenOut(heading)));
    if (heading.endsWith(" min")) {
      String base = writtenOut(heading.substring(0, heading.length() - 4));
      MINUTES.forEach(minutes -> forms.add(base + minutes));
    }
    return Set.copyOf(forms);
  }
}
