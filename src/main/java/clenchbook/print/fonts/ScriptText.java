package clenchbook.print.fonts;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.util.List;
import java.util.Optional;

/** Texts of any script in a drawing. */
public final class ScriptText {
  private ScriptText() {}

  /**
   * How wide a text is.
   *
   * @param text any text
   * @param font a text face in its size
   * @param context how exactly it is measured
   * @return in the drawing's unit
   */
  public static double width(String text, Font font, FontRenderContext context) {
    if (text.isEmpty()) {
      return 0;
    }
    return isPlain(text)
        ? font.getStringBounds(text, context).getWidth()
        : layout(text, font, context).getAdvance();
  }

  /**
   * Draws a text in the pen's font; letters that it lacks in a face that has them.
   *
   * @param pen the pen
   * @param text any text
   * @param x where it begins
   * @param y the line it stands on
   */
  public static void draw(Graphics2D pen, String text, float x, float y) {
    if (isPlain(text)) {
      pen.drawString(text, x, y);
    } else {
      layout(text, pen.getFont(), pen.getFontRenderContext()).draw(pen, x, y);
    }
  }

  private static boolean isPlain(String text) {
    return ScriptFace.neededBy(List.of(text)).isEmpty();
  }

  private static TextLayout layout(String text, Font font, FontRenderContext context) {
    AttributedString styled = new AttributedString(text);
    styled.addAttribute(TextAttribute.FONT, font);
    for (int i = 0; i < text.length(); ) {
      int letter = text.codePointAt(i);
      int next = i + Character.charCount(letter);
      Optional<ScriptFace> face = ScriptFace.of(letter);
      if (face.isPresent()) {
        Font other = face.get().font(font.isBold()).deriveFont(font.getSize2D());
        styled.addAttribute(TextAttribute.FONT, other, i, next);
      }
      i = next;
    }
    return new TextLayout(styled.getIterator(), context);
  }
}
