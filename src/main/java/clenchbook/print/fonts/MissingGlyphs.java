package clenchbook.print.fonts;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Finds the characters that no font of the program can print, so that none is dropped unsaid. */
public final class MissingGlyphs {
  /** What is printed in place of a character that no font has. */
  public static final String REPLACEMENT = "\uFFFD";

  /** A book uses few letters: each is asked for once. */
  private static final Map<Integer, Boolean> KNOWN = new ConcurrentHashMap<>();

  private MissingGlyphs() {}

  /**
   * The characters of a text that can't be printed.
   *
   * @param text any text
   * @return each such character once, in the order they appear; empty when all can be printed
   */
  public static List<String> in(String text) {
    if (isPlain(text)) {
      return List.of();
    }
    Set<String> missing = new LinkedHashSet<>();
    inOnePiece(text)
        .codePoints()
        .filter(c -> !isPrintable(c))
        .forEach(c -> missing.add(Character.toString(c)));
    return List.copyOf(missing);
  }

  /**
   * A text as it can be printed: accents joined to their letters, and each character that no font
   * has replaced by a mark that is seen.
   *
   * @param text any text
   * @return the printable text
   */
  public static String replacedIn(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder printable = new StringBuilder(text.length());
    inOnePiece(text)
        .codePoints()
        .forEach(
            c -> {
              if (isPrintable(c)) {
                printable.appendCodePoint(c);
              } else {
                printable.append(REPLACEMENT);
              }
            });
    return printable.toString();
  }

  /** Most texts are: no font need be asked. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > '~' || (c < ' ' && c != '\n')) {
        return false;
      }
    }
    return true;
  }

  /** Accents on their letters, a tabulator as the blank it looks like. */
  private static String inOnePiece(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC).replace('\t', ' ').replace("\r", "");
  }

  private static boolean isPrintable(int character) {
    return KNOWN.computeIfAbsent(character, MissingGlyphs::ask);
  }

  private static boolean ask(int character) {
    boolean control = Character.isISOControl(character) && character != '\n';
    return !control
        && (character == '\n'
            || Typefaces.canDisplay(character)
            || ScriptFace.of(character).isPresent());
  }
}
