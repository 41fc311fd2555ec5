package clenchbook.reading.formats.parts;

import clenchbook.reading.formats.cells.Cell;
import java.io.IOException;

/** Gathers the text of one cell from the pieces that XML gives it in, up to the longest allowed. */
public final class XmlText {
  private String first = "";
  private final StringBuilder more = new StringBuilder();
  private boolean cut;

  public void clear() {
    first = "";
    more.setLength(0);
    cut = false;
  }

  /** Adds one piece; what goes beyond the longest text is dropped and remembered as cut. */
  public void add(String piece) {
    if (first.isEmpty() && more.length() == 0 && piece.length() <= Cell.LONGEST_TEXT) {
      first = piece;
      return;
    }
    if (more.length() == 0) {
      more.append(first);
      first = "";
    }
    int room = Cell.LONGEST_TEXT - more.length();
    more.append(piece, 0, Math.min(room, piece.length()));
    cut |= piece.length() > room;
  }

  /** Adds all the text up to the end of the element that just started. */
  public void addElement(Xml xml) throws IOException {
    int depth = 1;
    while (depth > 0 && xml.next()) {
      if (xml.starts()) {
        depth++;
      } else if (xml.ends()) {
        depth--;
      } else {
        add(xml.piece());
      }
    }
  }

  public boolean isCut() {
    return cut;
  }

  public String text() {
    return more.length() == 0 ? first : more.toString();
  }

  /** The text with the {@code _x000D_} that office XML writes for control characters undone. */
  public String unescaped() {
    String text = text();
    return text.contains("_x") ? unescape(text) : text;
  }

  private static String unescape(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      if (isEscape(text, i)) {
        plain.append((char) Integer.parseInt(text.substring(i + 2, i + 6), 16));
        i += 6;
      } else {
        plain.append(text.charAt(i));
      }
    }
    return plain.toString();
  }

  private static boolean isEscape(String text, int at) {
    if (!text.startsWith("_x", at) || at + 6 >= text.length() || text.charAt(at + 6) != '_') {
      return false;
    }
    for (int i = at + 2; i < at + 6; i++) {
      if (Character.digit(text.charAt(i), 16) < 0) {
        return false;
      }
    }
    return true;
  }
}
