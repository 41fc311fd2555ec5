package clenchbook.print.scripts;

import com.lowagie.text.pdf.PdfContentByte;

/** A piece of a line in one face, size and direction. */
public interface Piece {
  /** In points. */
  float width();

  /**
   * Draws it.
   *
   * @param pen the page
   * @param x where it begins, in points
   * @param y the line it stands on, in points
   */
  void write(PdfContentByte pen, float x, float y);
}
