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

  /** The letters from U+00C0 to U+00FF without their marks; a space is no letter. */
  private static final String WITHOUT_MARKS =
      "aaaaaaæceeeeiiiiðnooooo øuuuuyþßaaaaaaæceeeeiiiiðnooooo øuuuuyþy";

  private static final int FIRST_MARKED = 0xC0;
  private static final int LAST_MARKED = 0xFF;

  private SameWords() {}

  /** The letters and digits, small, without accents, spaces and punctuation. */
  public static String bare(String words) {
    StringBuilder kept = new StringBuilder(words.length() + 1);
    for (int at = 0; at < words.length(); at++) {
      char c = words.charAt(at);
      if (c < 128) {
        addPlain(kept, c);
      } else if (c >= FIRST_MARKED && c <= LAST_MARKED) {
        addMarked(kept, c);
      } else if (!isSign(c)) {
        return bareOfAny(words);
      }
    }
    return kept.toString();
  }

  /** Signs of currency, dashes, quotation marks, and accents that are characters of their own. */
  private static boolean isSign(char c) {
    return (c >= 0x00A0 && c <= 0x00A9)
        || c == 0x00B0
        || (c >= 0x0300 && c <= 0x036F)
        || (c >= 0x2000 && c <= 0x206F)
        || (c >= 0x20A0 && c <= 0x20CF);
  }

  private static void addPlain(StringBuilder kept, char c) {
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      kept.append(c);
    } else if (c >= 'A' && c <= 'Z') {
      kept.append((char) (c + 32));
    }
  }

  private static void addMarked(StringBuilder kept, char c) {
    char letter = WITHOUT_MARKS.charAt(c - FIRST_MARKED);
    if (letter == 'ß') {
      kept.append("ss");
    } else if (letter != ' ') {
      kept.append(letter);
    }
  }

  private static String bareOfAny(String words) {
    String text = Normalizer.normalize(words, Normalizer.Form.NFKD);
    StringBuilder kept = new StringBuilder(text.length());
    text.codePoints().filter(Character::isLetterOrDigit).forEach(kept::appendCodePoint);
    return kept.toString().toLowerCase(Locale.ROOT).replace("ß", "ss");
  }

  /**
   * The bare words with German umlauts written out: some words differ in nothing else, as "Nagel"
   * and "Nägel".
   */
  public static String writtenOut(String words) {
    boolean plain = true;
    for (int at = 0; at < words.length() && plain; at++) {
      plain = words.charAt(at) < 128;
    }
    if (plain) {
      return bare(words);
    }
    StringBuilder text = new StringBuilder(words.length() + 2);
    for (int at = 0; at < words.length(); at++) {
      char c = words.charAt(at);
      boolean parted = at + 1 < words.length() && words.charAt(at + 1) == '\u0308';
      switch (parted ? marked(c) : c) {
        case 'ä', 'Ä' -> text.append("ae");
        case 'ö', 'Ö' -> text.append("oe");
        case 'ü', 'Ü' -> text.append("ue");
        default -> text.append(c);
      }
      at += parted ? 1 : 0;
    }
    return bare(text.toString());
  }

  /** A vowel with the two dots that some programs keep as a character of their own. */
  private static char marked(char vowel) {
    return switch (vowel) {
      case 'a', 'A' -> 'ä';
      case 'o', 'O' -> 'ö';
      case 'u', 'U' -> 'ü';
      default -> vowel;
    };
  }

  /**
   * All bare forms of a heading: one that ends in "min" may end in "minutes" or the like. Umlauts
   * are written out; that they may also be left out is for who looks a word up.
   */
  public static Set<String> forms(String heading) {
    if (!heading.endsWith(" min")) {
      return Set.of(writtenOut(heading));
    }
    String base = writtenOut(heading.substring(0, heading.length() - 4));
    List<String> forms = new ArrayList<>();
    MINUTES.forEach(minutes -> forms.add(base + minutes));
    return Set.copyOf(forms);
  }
}
