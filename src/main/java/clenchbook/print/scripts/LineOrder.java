package clenchbook.print.scripts;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/**
 * In which order the parts of a line are seen.
 *
 * <p>Source: Unicode Standard Annex 9 (the bidirectional algorithm), by Java's own class. A
 * paragraph runs as its document does, from left to right, unless all its letters run the other
 * way.
 */
public final class LineOrder {
  /**
   * A part of a line that runs one way.
   *
   * @param from its first letter in the paragraph
   * @param to the letter after its last
   * @param level its depth; odd where it runs from right to left
   */
  public record Part(int from, int to, int level) {
    /**
     * Which way it runs.
     *
     * @return true from right to left
     */
    public boolean rightToLeft() {
      return level % 2 == 1;
    }
  }

  private LineOrder() {}

  /**
   * The parts of a line as they are spoken.
   *
   * @param paragraph the whole paragraph
   * @param from the line's first letter
   * @param to the letter after its last
   * @return in the order of the text
   */
  public static List<Part> parts(String paragraph, int from, int to) {
    char[] letters = paragraph.toCharArray();
    if (!Bidi.requiresBidi(letters, 0, letters.length)) {
      return List.of(new Part(from, to, 0));
    }
    int base =
        hasLeftToRight(paragraph) ? Bidi.DIRECTION_LEFT_TO_RIGHT : Bidi.DIRECTION_RIGHT_TO_LEFT;
    Bidi line = new Bidi(paragraph, base).createLineBidi(from, to);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < line.getRunCount(); i++) {
      parts.add(
          new Part(from + line.getRunStart(i), from + line.getRunLimit(i), line.getRunLevel(i)));
    }
    return parts;
  }

  private static boolean hasLeftToRight(String text) {
    return text.codePoints()
        .anyMatch(c -> Character.getDirectionality(c) == Character.DIRECTIONALITY_LEFT_TO_RIGHT);
  }

  /**
   * Signs of the text faces among letters that run from right to left, as they are seen.
   *
   * @param text as it is spoken
   * @return turned round, brackets mirrored
   */
  public static String turned(String text) {
    StringBuilder turned = new StringBuilder(text).reverse();
    for (int i = 0; i < turned.length(); i++) {
      int at = MIRRORED.indexOf(turned.charAt(i));
      if (at >= 0) {
        turned.setCharAt(i, MIRRORED.charAt(at ^ 1));
      }
    }
    return turned.toString();
  }

  /** The signs that names and addresses may hold, in pairs. */
  private static final String MIRRORED = "()[]{}<>\u00AB\u00BB\u2039\u203A";
}
