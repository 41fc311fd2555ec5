package clenchbook.print.scripts;

import clenchbook.print.fonts.ScriptFace;
import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Point2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Locale;

/**
 * Letters of one script, direction and face, shaped: joined, put above and below each other,
 * ordered from left to right as they are seen. Beneath the glyphs lies the text itself, for those
 * who hear it or copy it: within the page where it runs from left to right; else in the document's
 * structure, because common readers of text take the page's for letters seen from the left.
 */
public final class ShapedRun implements Piece {
  private static final float EM = 1000;

  /** From this number on Java speaks of letters that leave no mark. */
  private static final int INVISIBLE = 0xFFFE;

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  /** How much heavier the outline of a face without a bold one gets, in parts of its size. */
  private static final float HEAVIER = 0.03f;

  private final ScriptFonts fonts;
  private final GlyphFont font;
  private final GlyphVector glyphs;
  private final String text;
  private final float size;
  private final boolean rightToLeft;
  private final boolean drawnHeavier;
  private final Color colour;
  private final Meanings meanings;

  /** How a run looks. */
  public record Look(float size, boolean bold, Color colour) {}

  /**
   * Shapes a run.
   *
   * @param fonts the document's further faces
   * @param face the script
   * @param text its letters, as they are spoken
   * @param rightToLeft true where it runs from right to left
   * @param look size, weight and colour
   */
  public ShapedRun(
      ScriptFonts fonts, ScriptFace face, String text, boolean rightToLeft, Look look) {
    this.fonts = fonts;
    this.text = text;
    this.rightToLeft = rightToLeft;
    this.size = look.size();
    this.colour = look.colour();
    this.drawnHeavier = look.bold() && !face.hasBold();
    font = fonts.font(face, look.bold());
    Font drawn = face.font(look.bold()).deriveFont(EM);
    char[] letters = text.toCharArray();
    glyphs =
        drawn.layoutGlyphVector(
            EXACT,
            letters,
            0,
            letters.length,
            rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
    meanings = new Meanings(glyphs, text, drawn);
  }

  @Override
  public float width() {
    return (float) glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX() * size / EM;
  }

  @Override
  public void write(PdfContentByte pen, float x, float y) {
    if (rightToLeft) {
      fonts.aloud().begin(text);
    }
    String drawn = glyphs();
    byte[] content =
        (rightToLeft ? drawn : spoken(text) + drawn + "\nEMC").getBytes(StandardCharsets.US_ASCII);
    pen.setColorFill(colour);
    if (drawnHeavier) {
      pen.setColorStroke(colour);
    }
    pen.addTemplate(fonts.form(content, font, box()), x, y);
    if (rightToLeft) {
      fonts.aloud().end();
    }
  }

  private static String spoken(String text) {
    byte[] letters = text.getBytes(StandardCharsets.UTF_16BE);
    return "/Span <</ActualText<FEFF"
        + HexFormat.of().withUpperCase().formatHex(letters)
        + ">>>BDC\n";
  }

  private String glyphs() {
    StringBuilder content = new StringBuilder(64 * glyphs.getNumGlyphs());
    content.append("BT /F ").append(number(size)).append(" Tf");
    if (drawnHeavier) {
      content.append(" 2 Tr ").append(number(size * HEAVIER)).append(" w");
    }
    for (int i = 0; i < glyphs.getNumGlyphs(); i++) {
      int glyph = glyphs.getGlyphCode(i);
      if (glyph < INVISIBLE) {
        font.uses(glyph, meanings.of(i));
        Point2D at = glyphs.getGlyphPosition(i);
        content.append("\n1 0 0 1 ").append(number((float) at.getX() * size / EM)).append(' ');
        content.append(number((float) -at.getY() * size / EM)).append(" Tm <");
        content.append(hex(glyph)).append("> Tj");
      }
    }
    return content.append("\nET").toString();
  }

  /** Twice as far as the face's letters may reach. */
  private String box() {
    return String.format(
        Locale.ROOT,
        "[%s %s %s %s]",
        number(-size),
        number(2 * font.descent() * size / EM),
        number(width() + size),
        number(2 * font.ascent() * size / EM));
  }

  /** A number in the syntax of PDF. */
  static String number(float value) {
    BigDecimal rounded = new BigDecimal(Float.toString(value)).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A glyph's number in the syntax of PDF. */
  static String hex(int glyph) {
    return HexFormat.of().withUpperCase().toHexDigits((short) glyph);
  }
}
