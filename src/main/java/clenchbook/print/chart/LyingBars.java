package clenchbook.print.chart;

import clenchbook.print.fonts.MissingGlyphs;
import clenchbook.print.fonts.ScriptText;
import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.Chart;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Bars to the right of their names, each with its figure at its end: no axis is needed, and no name
 * touches a bar.
 */
final class LyingBars {
  private static final float SIZE = 8.5f;
  private static final double GAP = 7;

  /** How high figures and capitals stand, in parts of the size. */
  private static final double FIGURE_HEIGHT = 0.714;

  private static final double THICKEST = 13;
  private static final double WIDEST_NAME = 0.62;

  /** A page's own letters may be wider than those it was measured with. */
  private static final double ROOM = 1.1;

  private final Graphics2D pen;
  private final Rectangle2D area;
  private final Chart.Columns chart;
  private final FontMetrics metrics;
  private final double names;
  private final double before;
  private final double lowest;
  private final double pointsPerUnit;

  private LyingBars(Graphics2D pen, Rectangle2D area, Chart.Columns chart) {
    this.pen = pen;
    this.area = area;
    this.chart = chart;
    pen.setFont(Typefaces.text(SIZE, false));
    this.metrics = pen.getFontMetrics();
    this.names = Math.min(widest(chart.categories()) * ROOM, area.getWidth() * WIDEST_NAME);
    double labels = 0;
    double labelsBefore = 0;
    double low = 0;
    double high = 0;
    for (Chart.Series series : chart.series()) {
      for (int i = 0; i < series.values().size(); i++) {
        double value = series.values().get(i);
        low = Math.min(low, value);
        high = Math.max(high, value);
        double label = series.labels().isEmpty() ? 0 : width(series.labels().get(i)) * ROOM;
        labels = Math.max(labels, value < 0 ? 0 : label);
        labelsBefore = Math.max(labelsBefore, value < 0 ? label : 0);
      }
    }
    for (Chart.Limit limit : chart.limits()) {
      low = Math.min(low, limit.value());
      high = Math.max(high, limit.value());
    }
    this.lowest = low;
    this.before = labelsBefore;
    double room = area.getWidth() - names - before - labels - 3 * GAP;
    this.pointsPerUnit = high > low ? room / (high - low) : 0;
  }

  static void draw(Graphics2D pen, Rectangle2D area, Chart.Columns chart) {
    LyingBars bars = new LyingBars(pen, area, chart);
    double row = area.getHeight() / Math.max(1, chart.categories().size());
    for (int i = 0; i < chart.categories().size(); i++) {
      bars.row(i, area.getY() + i * row, row, false);
    }
    bars.upright(0, new BasicStroke(0.8f));
    chart.limits().forEach(limit -> bars.upright(limit.value(), ChartPlots.limitStroke()));
    for (int i = 0; i < chart.categories().size(); i++) {
      bars.row(i, area.getY() + i * row, row, true);
    }
  }

  private double widest(List<String> texts) {
    return texts.stream().mapToDouble(this::width).max().orElse(0);
  }

  private double width(String text) {
    return ScriptText.width(text, pen.getFont(), pen.getFontRenderContext());
  }

  private double across(double value) {
    return area.getX() + names + GAP + before + (value - lowest) * pointsPerUnit;
  }

  /** A row's name and bars, or its figures, which lie over everything. */
  private void row(int at, double top, double height, boolean figures) {
    int bars = chart.series().size();
    double thick = Math.min(THICKEST, height * 0.78 / bars);
    double y = top + (height - thick * bars) / 2;
    if (!figures) {
      pen.setColor(Palette.INK);
      String name = MissingGlyphs.replacedIn(chart.categories().get(at));
      text(fitted(name), area.getX(), top + height / 2);
    }
    for (int i = 0; i < bars; i++) {
      Chart.Series series = chart.series().get(i);
      double value = series.values().get(at);
      double from = across(Math.min(0, value));
      double to = across(Math.max(0, value));
      if (!figures) {
        SeriesStyle.at(i).paint(pen, new Rectangle2D.Double(from, y, to - from, thick));
      } else if (!series.labels().isEmpty()) {
        String words = series.labels().get(at);
        double x = value < 0 ? from - width(words) - GAP + 2 : to + GAP - 2;
        label(words, x, y + thick / 2, thick);
      }
      y += thick;
    }
  }

  /** On white where there is a limit, so that this does not strike it through. */
  private void label(String words, double x, double middle, double most) {
    if (!chart.limits().isEmpty()) {
      double height = Math.min(most, metrics.getAscent() + metrics.getDescent() - 2);
      pen.setColor(Color.WHITE);
      pen.fill(new Rectangle2D.Double(x - 1, middle - height / 2, width(words) + 2, height));
    }
    pen.setColor(Palette.INK);
    text(words, x, middle);
  }

  private void text(String words, double x, double middle) {
    double baseline = middle + FIGURE_HEIGHT * SIZE / 2;
    ScriptText.draw(pen, words, (float) x, (float) baseline);
  }

  private String fitted(String name) {
    String cut = name;
    while (width(cut) > names + 0.5 && cut.length() > 2) {
      cut = cut.substring(0, cut.length() - 2).stripTrailing() + "…";
    }
    return cut;
  }

  private void upright(double value, BasicStroke stroke) {
    pen.setColor(Palette.INK);
    pen.setStroke(stroke);
    double x = across(value);
    pen.draw(new Line2D.Double(x, area.getY(), x, area.getMaxY()));
  }
}
