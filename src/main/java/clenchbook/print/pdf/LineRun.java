package clenchbook.print.pdf;

import clenchbook.print.scripts.Piece;
import com.lowagie.text.Font;
import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;

/** Letters of one face, size and colour on a line. */
final class LineRun implements Piece {
  private final String letters;
  private final Font font;
  private final float width;

  LineRun(String letters, Font font) {
    this.letters = letters;
    this.font = font;
    this.width = font.getBaseFont().getWidthPoint(letters, font.getSize());
  }

  @Override
  public float width() {
    return width;
  }

  @Override
  public void write(PdfContentByte pen, float x, float y) {
    Color colour = font.getColor();
    pen.beginText();
    pen.setFontAndSize(font.getBaseFont(), font.getSize());
    if (colour != null) {
      pen.setColorFill(colour);
    }
    pen.moveText(x, y);
    pen.showText(letters);
    pen.endText();
  }
}
