package clenchbook.print.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How one series of a picture looks: a fill, a hatching, a dash and a marker, so that series stay
 * apart without colour.
 */
final class SeriesStyle {
  private static final double GAP = 4.5;
  private static final float[] SOLID = {};

  private static final List<SeriesStyle> ALL =
      List.of(
          new SeriesStyle(0x8A3B12, Hatch.NONE, SOLID, square(3)),
          new SeriesStyle(0xE3D2C1, Hatch.RISING, new float[] {6, 3}, circle(3)),
          new SeriesStyle(0xFFFFFF, Hatch.LEVEL, new float[] {2, 2}, triangle(3.4)),
          new SeriesStyle(0xA9B8C2, Hatch.NONE, new float[] {8, 3, 2, 3}, diamond(3.6)),
          new SeriesStyle(0x2B3A45, Hatch.FALLING, new float[] {12, 4}, circle(2)),
          new SeriesStyle(0xF3E9DF, Hatch.UPRIGHT, new float[] {4, 4}, square(2)),
          new SeriesStyle(0xC98F66, Hatch.CROSSED, new float[] {1, 3}, triangle(2.4)),
          new SeriesStyle(0xFFFFFF, Hatch.RISING, new float[] {10, 2, 2, 2}, diamond(2.4)));

  private enum Hatch {
    NONE,
    RISING,
    FALLING,
    LEVEL,
    UPRIGHT,
    CROSSED
  }

  private final Color fill;
  private final Hatch hatch;
  private final float[] dash;
  private final Shape marker;

  private SeriesStyle(int rgb, Hatch hatch, float[] dash, Shape marker) {
    this.fill = new Color(rgb);
    this.hatch = hatch;
    this.dash = dash;
    this.marker = marker;
  }

  /** The look of the series at that place; looks begin anew after the eighth. */
  static SeriesStyle at(int index) {
    return ALL.get(index % ALL.size());
  }

  Shape marker() {
    return marker;
  }

  Color fill() {
    return fill;
  }

  /** Dark enough for a line on white. */
  Color line() {
    return fill.getRed() > 0xB0 ? Palette.QUIET : fill;
  }

  Stroke stroke(float width, boolean dashed) {
    float[] pattern = dashed && dash.length == 0 ? new float[] {5, 3} : dash;
    return pattern.length == 0
        ? new BasicStroke(width)
        : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
  }

  /** Paints a bar or a swatch of the legend. */
  void paint(Graphics2D pen, Rectangle2D bar) {
    pen.setColor(fill);
    pen.fill(bar);
    pen.setStroke(new BasicStroke(0.5f));
    Path2D lines = hatching(bar);
    if (lines.getCurrentPoint() != null) {
      pen.setColor(fill.getRed() < 0x50 ? Color.WHITE : Palette.INK);
      pen.draw(lines);
    }
    pen.setColor(Palette.INK);
    pen.draw(bar);
  }

  private Path2D hatching(Rectangle2D bar) {
    Path2D lines = new Path2D.Double();
    if (hatch == Hatch.RISING || hatch == Hatch.CROSSED) {
      slanted(lines, bar, 1);
    }
    if (hatch == Hatch.FALLING || hatch == Hatch.CROSSED) {
      slanted(lines, bar, -1);
    }
    if (hatch == Hatch.LEVEL) {
      for (double y = bar.getMaxY() - GAP / 2; y > bar.getY(); y -= GAP) {
        lines.append(new Line2D.Double(bar.getX(), y, bar.getMaxX(), y), false);
      }
    }
    if (hatch == Hatch.UPRIGHT) {
      for (double x = bar.getX() + GAP / 2; x < bar.getMaxX(); x += GAP) {
        lines.append(new Line2D.Double(x, bar.getY(), x, bar.getMaxY()), false);
      }
    }
    return lines;
  }

  /** Lines at 45 degrees, cut at the bar's edges by arithmetic: a clip would swell the file. */
  private static void slanted(Path2D lines, Rectangle2D bar, int direction) {
    double left = bar.getX();
    double right = bar.getMaxX();
    double reach = bar.getWidth() + bar.getHeight();
    for (double offset = GAP / 2; offset < reach; offset += GAP) {
      double x1 = Math.max(left, left + offset - bar.getHeight());
      double x2 = Math.min(right, left + offset);
      double y1 = bar.getY() + offset - (x1 - left);
      double y2 = bar.getY() + offset - (x2 - left);
      if (direction < 0) {
        double mirror = left + right;
        lines.append(new Line2D.Double(mirror - x1, y1, mirror - x2, y2), false);
      } else {
        lines.append(new Line2D.Double(x1, y1, x2, y2), false);
      }
    }
  }

  private static Shape square(double half) {
    return new Rectangle2D.Double(-half, -half, 2 * half, 2 * half);
  }

  private static Shape circle(double radius) {
    return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
  }

  private static Shape triangle(double half) {
    return polygon(0, -half, half, half, -half, half);
  }

  private static Shape diamond(double half) {
    return polygon(0, -half, half, 0, 0, half, -half, 0);
  }

  private static Shape polygon(double... points) {
    Path2D shape = new Path2D.Double();
    shape.moveTo(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      shape.lineTo(points[i], points[i + 1]);
    }
    shape.closePath();
    return shape;
  }
}
