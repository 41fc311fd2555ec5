package clenchbook.print.chart;

import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.Chart;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.renderers.AbstractRenderer;
import net.sf.jasperreports.renderers.Graphics2DRenderable;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.Plot;

/** A picture of figures, drawn as lines for paper and page alike, with its legend on top. */
public final class ChartPicture extends AbstractRenderer implements Graphics2DRenderable {
  private static final long serialVersionUID = 1L;
  private static final float LEGEND_SIZE = 8.5f;
  private static final int ROW = 14;
  private static final int SWATCH = 18;
  private static final int LIMIT = -1;

  private final transient Chart chart;
  private final Locale numbers;

  /**
   * A picture to draw.
   *
   * @param chart what it shows
   * @param numbers how its axes write numbers
   */
  public ChartPicture(Chart chart, Locale numbers) {
    this.chart = chart;
    this.numbers = numbers;
  }

  @Override
  public void render(JasperReportsContext context, Graphics2D pen, Rectangle2D area) {
    draw(pen, area);
  }

  /** Draws the chart and its legend into an area, in points. */
  public void draw(Graphics2D pen, Rectangle2D area) {
    double used = drawLegend(pen, area);
    Rectangle2D rest =
        new Rectangle2D.Double(
            area.getX(), area.getY() + used, area.getWidth(), area.getHeight() - used);
    if (chart instanceof Chart.Intervals intervals) {
      IntervalRows.draw(pen, rest, intervals);
    } else if (chart instanceof Chart.Columns columns && columns.lying()) {
      LyingBars.draw(pen, rest, columns);
    } else {
      drawPlot(pen, rest);
    }
  }

  private void drawPlot(Graphics2D pen, Rectangle2D rest) {
    Plot plot = new ChartPlots(numbers).of(chart);
    JFreeChart drawing = new JFreeChart(null, null, plot, false);
    drawing.setBackgroundPaint(null);
    drawing.setBorderVisible(false);
    drawing.setElementHinting(false);
    drawing.draw(pen, rest);
  }

  private record Entry(String name, int index) {}

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>(named());
    if (chart instanceof Chart.Columns columns) {
      columns.limits().forEach(limit -> entries.add(new Entry(limit.name(), LIMIT)));
    }
    return entries;
  }

  private List<Entry> named() {
    List<Entry> entries = new ArrayList<>();
    if (chart instanceof Chart.Columns columns && columns.series().size() > 1) {
      columns.series().forEach(series -> entries.add(new Entry(series.name(), entries.size())));
    } else if (chart instanceof Chart.Lines lines && lines.lines().size() > 1) {
      lines.lines().forEach(line -> entries.add(new Entry(line.name(), entries.size())));
    }
    return entries;
  }

  /** Draws the legend, as many rows as it needs, and gives its height. */
  private double drawLegend(Graphics2D pen, Rectangle2D area) {
    List<Entry> entries = entries();
    if (entries.isEmpty()) {
      return 0;
    }
    pen.setFont(Typefaces.text(LEGEND_SIZE, false));
    FontMetrics metrics = pen.getFontMetrics();
    double x = area.getX() + 4;
    double y = area.getY() + 2;
    for (Entry entry : entries) {
      double width = SWATCH + 5 + metrics.stringWidth(entry.name()) + 16;
      if (x + width > area.getMaxX() && x > area.getX() + 4) {
        x = area.getX() + 4;
        y += ROW;
      }
      drawSwatch(pen, entry.index(), x, y);
      pen.setColor(Palette.INK);
      pen.drawString(entry.name(), (float) (x + SWATCH + 5), (float) (y + 9));
      x += width;
    }
    return y + ROW + 2 - area.getY();
  }

  private void drawSwatch(Graphics2D pen, int index, double x, double y) {
    if (index == LIMIT) {
      pen.setColor(Palette.INK);
      pen.setStroke(ChartPlots.limitStroke());
      pen.draw(new Line2D.Double(x, y + 6, x + SWATCH, y + 6));
      return;
    }
    SeriesStyle style = SeriesStyle.at(index);
    if (chart instanceof Chart.Lines lines) {
      pen.setColor(style.line());
      pen.setStroke(style.stroke(1.6f, lines.lines().get(index).dashed()));
      pen.draw(new Line2D.Double(x, y + 6, x + SWATCH, y + 6));
      pen.fill(
          AffineTransform.getTranslateInstance(x + SWATCH / 2.0, y + 6)
              .createTransformedShape(style.marker()));
    } else {
      style.paint(pen, new Rectangle2D.Double(x, y + 1, SWATCH, 9));
    }
    pen.setColor(Color.BLACK);
  }
}
