package clenchbook.print.scripts;

import com.lowagie.text.pdf.PdfContentByte;
import java.text.Bidi;
import java.util.List;
import java.util.stream.IntStream;

/** A line of pieces, written in the order it is spoken, each where it is seen. */
public final class SeenLine {
  private final List<Piece> spoken;
  private final float[] left;
  private final float width;

  private SeenLine(List<Piece> spoken, float[] left, float width) {
    this.spoken = spoken;
    this.left = left;
    this.width = width;
  }

  /** A line of one piece. */
  public static SeenLine of(Piece piece) {
    return new SeenLine(List.of(piece), new float[1], piece.width());
  }

  /**
   * A line of several pieces.
   *
   * @param spoken the pieces as they are spoken
   * @param levels the level of each, as {@link LineOrder.Part} gives it
   */
  public static SeenLine of(List<Piece> spoken, List<Integer> levels) {
    byte[] depths = new byte[levels.size()];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = levels.get(i).byteValue();
    }
    Integer[] seen = IntStream.range(0, spoken.size()).boxed().toArray(Integer[]::new);
    Bidi.reorderVisually(depths, 0, seen, 0, seen.length);
    float[] left = new float[spoken.size()];
    float at = 0;
    for (int piece : seen) {
      left[piece] = at;
      at += spoken.get(piece).width();
    }
    return new SeenLine(List.copyOf(spoken), left, at);
  }

  /** In points. */
  public float width() {
    return width;
  }

  /**
   * Draws it.
   *
   * @param pen the page
   * @param x its left end, in points
   * @param y the line it stands on, in points
   */
  public void write(PdfContentByte pen, float x, float y) {
    for (int i = 0; i < left.length; i++) {
      spoken.get(i).write(pen, x + left[i], y);
    }
  }
}
