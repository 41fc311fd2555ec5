package clenchbook.matching.evidence;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A name as banks and books write it, brought to words that compare: small letters, no accents,
 * umlauts and their two-letter spellings alike, without titles, legal forms and "and".
 */
public final class PayerName {
  private static final Set<String> FILLERS =
      Set.of(
          "mr", "mrs", "ms", "miss", "dr", "prof", "herr", "herrn", "frau", "fam", "familie", "m",
          "mme", "mlle", "sr", "sra", "don", "dona", "dhr", "mevr", "mw", "hr", "fr", "and", "und",
          "et", "y", "en", "e", "u", "o", "oder", "or", "ou", "ltd", "limited", "llc", "inc", "plc",
          "gmbh", "ag", "kg", "ohg", "gbr", "ug", "ev", "sarl", "sas", "sl", "sa", "bv", "nv",
          "vof", "co", "the", "der", "die", "das", "le", "la", "les", "el", "los", "las", "de",
          "het", "van", "von", "du", "del", "des");

  private static final int MOST_WORDS = 40;

  private PayerName() {}

  /**
   * The words of a name, fillers left out unless nothing else is there.
   *
   * @param name any text
   * @return in its order, at most forty
   */
  public static List<String> words(String name) {
    List<String> all = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    String plain = plain(name);
    for (int at = 0; at <= plain.length() && all.size() < MOST_WORDS; at++) {
      char c = at < plain.length() ? plain.charAt(at) : ' ';
      if (Character.isLetterOrDigit(c)) {
        word.append(c);
      } else if (!word.isEmpty()) {
        all.add(folded(word.toString()));
        word.setLength(0);
      }
    }
    List<String> telling = all.stream().filter(each -> !FILLERS.contains(each)).toList();
    return telling.isEmpty() ? List.copyOf(all) : telling;
  }

  /**
   * One text for equal names, whatever the order of their words.
   *
   * @param name any text
   * @return empty for none
   */
  public static String key(String name) {
    return String.join(" ", new java.util.TreeSet<>(words(name)));
  }

  private static String plain(String name) {
    String parted = isAscii(name) ? name : Normalizer.normalize(name, Normalizer.Form.NFKD);
    StringBuilder plain = new StringBuilder(parted.length());
    for (char c : parted.toLowerCase(Locale.ROOT).toCharArray()) {
      int type = Character.getType(c);
      if (c == 'ß') {
        plain.append("ss");
      } else if (c == 'ø') {
        plain.append('o');
      } else if (c == 'æ') {
        plain.append('a');
      } else if (c == 'ł') {
        plain.append('l');
      } else if (c != '\'' && c != '’' && type != Character.NON_SPACING_MARK) {
        plain.append(c);
      }
    }
    return plain.toString();
  }

  private static boolean isAscii(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) > 0x7e) {
        return false;
      }
    }
    return true;
  }

  /** Mueller and Müller, Goetz and Götz become one. */
  private static String folded(String word) {
    return word.length() < 4 ? word : word.replace("ae", "a").replace("oe", "o").replace("ue", "u");
  }
}
