package clenchbook.print.chart;

import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.Chart;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Differences about one zero: a dot with a line for its interval, filled where the interval leaves
 * zero out and hollow where it holds it. Each row has its own scale, and its figures beside it.
 */
final class IntervalRows {
  private static final float SIZE = 8.5f;
  private static final double HEAD = 18;
  private static final double GAP = 10;
  private static final double DOT = 3.4;
  private static final double ROOM = 1.1;

  private final Graphics2D pen;
  private final Rectangle2D area;
  private final Chart.Intervals chart;
  private final FontMetrics metrics;
  private final double zero;
  private final double half;
  private final double figures;

  private IntervalRows(Graphics2D pen, Rectangle2D area, Chart.Intervals chart) {
    this.pen = pen;
    this.area = area;
    this.chart = chart;
    pen.setFont(Typefaces.text(SIZE, false));
    this.metrics = pen.getFontMetrics();
    double names = 0;
    double texts = 0;
    for (Chart.IntervalRow row : chart.rows()) {
      names = Math.max(names, metrics.stringWidth(row.name()) * ROOM);
      texts = Math.max(texts, metrics.stringWidth(row.text()) * ROOM);
    }
    double left = area.getX() + names + GAP;
    this.figures = area.getMaxX() - texts;
    this.half = Math.max(20, (figures - GAP - left) / 2);
    this.zero = left + half;
  }

  static void draw(Graphics2D pen, Rectangle2D area, Chart.Intervals chart) {
    IntervalRows rows = new IntervalRows(pen, area, chart);
    rows.head();
    double height = (area.getHeight() - HEAD) / Math.max(1, chart.rows().size());
    for (int i = 0; i < chart.rows().size(); i++) {
      rows.row(chart.rows().get(i), area.getY() + HEAD + (i + 0.5) * height);
    }
  }

  private void head() {
    float baseline = (float) (area.getY() + 10);
    pen.setColor(Palette.QUIET);
    double below = metrics.stringWidth(chart.below()) * ROOM;
    pen.drawString(chart.below(), (float) (zero - GAP - below), baseline);
    pen.drawString(chart.above(), (float) (zero + GAP), baseline);
    arrow(zero - GAP - below - 4, -1, baseline - 3);
    arrow(zero + GAP + metrics.stringWidth(chart.above()) * ROOM + 4, 1, baseline - 3);
    pen.setColor(Palette.INK);
    pen.setStroke(new BasicStroke(0.9f));
    pen.draw(new Line2D.Double(zero, area.getY(), zero, area.getMaxY()));
  }

  private void arrow(double x, int direction, double y) {
    Path2D head = new Path2D.Double();
    head.moveTo(x + direction * 5, y);
    head.lineTo(x, y - 2.5);
    head.lineTo(x, y + 2.5);
    head.closePath();
    pen.fill(head);
  }

  private void row(Chart.IntervalRow row, double y) {
    Chart.Interval interval = row.interval();
    double most = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
    double scale = most > 0 ? half * 0.94 / most : 0;
    double low = zero + interval.low() * scale;
    double high = zero + interval.high() * scale;
    boolean shown = interval.low() > 0 || interval.high() < 0;
    pen.setColor(Palette.INK);
    double baseline = y + (metrics.getAscent() - metrics.getDescent()) / 2.0;
    pen.drawString(row.name(), (float) area.getX(), (float) baseline);
    pen.drawString(row.text(), (float) figures, (float) baseline);
    pen.setColor(shown ? Palette.RUST : Palette.QUIET);
    pen.setStroke(new BasicStroke(1.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    pen.draw(new Line2D.Double(low, y, high, y));
    pen.draw(new Line2D.Double(low, y - DOT, low, y + DOT));
    pen.draw(new Line2D.Double(high, y - DOT, high, y + DOT));
    double at = zero + interval.value() * scale;
    Ellipse2D dot = new Ellipse2D.Double(at - DOT, y - DOT, 2 * DOT, 2 * DOT);
    if (!shown) {
      pen.setColor(Color.WHITE);
    }
    pen.fill(dot);
    pen.setColor(shown ? Palette.RUST : Palette.QUIET);
    pen.draw(dot);
  }
}
