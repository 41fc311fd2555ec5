package clenchbook.print.invoice;

import com.google.zxing.common.BitMatrix;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.renderers.AbstractRenderer;
import net.sf.jasperreports.renderers.Graphics2DRenderable;

/** Draws a square code as lines, sharp at every size. */
final class SquareCode extends AbstractRenderer implements Graphics2DRenderable {
  private static final long serialVersionUID = 1L;

  private final transient BitMatrix squares;

  SquareCode(BitMatrix squares) {
    this.squares = squares;
  }

  @Override
  public void render(JasperReportsContext context, Graphics2D pen, Rectangle2D area) {
    double side = Math.min(area.getWidth(), area.getHeight()) / squares.getWidth();
    pen.setColor(Color.BLACK);
    for (int y = 0; y < squares.getHeight(); y++) {
      int x = 0;
      while (x < squares.getWidth()) {
        int from = x;
        while (x < squares.getWidth() && squares.get(x, y)) {
          x++;
        }
        if (x > from) {
          pen.fill(
              new Rectangle2D.Double(
                  area.getX() + from * side, area.getY() + y * side, (x - from) * side, side));
        }
        x++;
      }
    }
  }
}
