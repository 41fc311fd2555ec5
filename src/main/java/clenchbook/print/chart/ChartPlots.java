package clenchbook.print.chart;

import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.Chart;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RectangularShape;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarPainter;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;

/** Makes the plot of each kind of picture. */
final class ChartPlots {
  private static final float SMALL = 8.5f;
  private static final Color GRID = new Color(0xDDE1E4);
  private static final int MOST_LABELS = 18;

  private final Locale numbers;

  /**
   * Plots of a language and country.
   *
   * @param numbers how axes write numbers
   */
  ChartPlots(Locale numbers) {
    this.numbers = numbers;
  }

  Plot of(Chart chart) {
    if (chart instanceof Chart.Columns columns) {
      return columns(columns);
    }
    if (chart instanceof Chart.Lines lines) {
      return lines(lines);
    }
    return dots((Chart.Dots) chart);
  }

  private Plot columns(Chart.Columns chart) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (Chart.Series series : chart.series()) {
      for (int i = 0; i < chart.categories().size(); i++) {
        data.addValue(series.values().get(i), series.name(), chart.categories().get(i));
      }
    }
    BarRenderer renderer = chart.stacked() ? new StackedBarRenderer() : new BarRenderer();
    renderer.setBarPainter(new StyledBars());
    renderer.setShadowVisible(false);
    renderer.setItemMargin(0.04);
    renderer.setMaximumBarWidth(chart.lying() ? 0.14 : 0.09);
    renderer.setIncludeBaseInRange(true);
    labels(renderer, chart);
    CategoryAxis across = new CategoryAxis(title(chart.across()));
    across.setCategoryMargin(chart.categories().size() > 20 ? 0.12 : 0.28);
    across.setMaximumCategoryLabelLines(2);
    across.setMaximumCategoryLabelWidthRatio(chart.lying() ? 12f : 1.2f);
    thinOut(across, chart);
    look(across);
    NumberAxis up = numbers(chart.up(), true);
    CategoryPlot plot = new CategoryPlot(data, across, up, renderer);
    plot.setOrientation(chart.lying() ? PlotOrientation.HORIZONTAL : PlotOrientation.VERTICAL);
    plot.setOutlineVisible(false);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(GRID);
    plot.setRangeGridlineStroke(new BasicStroke(0.6f));
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(Palette.QUIET);
    plot.setInsets(new RectangleInsets(2, 2, 2, 8));
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    chart.limits().forEach(limit -> plot.addRangeMarker(across(limit), Layer.FOREGROUND));
    includeLimits(up, chart.limits());
    return plot;
  }

  /** Figures at the columns' ends, where the picture brings them. */
  private static void labels(BarRenderer renderer, Chart.Columns chart) {
    for (int i = 0; i < chart.series().size(); i++) {
      Chart.Series series = chart.series().get(i);
      if (!series.labels().isEmpty()) {
        renderer.setSeriesItemLabelsVisible(i, true);
        renderer.setSeriesItemLabelFont(i, Typefaces.text(SMALL, false));
        renderer.setSeriesItemLabelPaint(i, Palette.INK);
        renderer.setSeriesPositiveItemLabelPosition(
            i, new ItemLabelPosition(ItemLabelAnchor.OUTSIDE12, TextAnchor.BOTTOM_CENTER));
        renderer.setSeriesItemLabelGenerator(i, new GivenLabels(series.labels()));
      }
    }
  }

  /** Labels as the picture gives them. */
  private record GivenLabels(List<String> labels) implements CategoryItemLabelGenerator {
    @Override
    public String generateRowLabel(CategoryDataset data, int row) {
      return "";
    }

    @Override
    public String generateColumnLabel(CategoryDataset data, int column) {
      return "";
    }

    @Override
    public String generateLabel(CategoryDataset data, int row, int column) {
      return labels.get(column);
    }
  }

  /** The legend names the limit: beside the line its name would lie over the columns. */
  private static ValueMarker across(Chart.Limit limit) {
    ValueMarker marker = marker(limit);
    marker.setLabel(null);
    return marker;
  }

  /** Only every nth name is set where all would not fit. */
  private static void thinOut(CategoryAxis axis, Chart.Columns chart) {
    int count = chart.categories().size();
    if (chart.lying() || count <= MOST_LABELS) {
      return;
    }
    int step = (count + MOST_LABELS - 1) / MOST_LABELS;
    for (int i = 0; i < count; i++) {
      if (i % step != 0) {
        axis.setTickLabelPaint(chart.categories().get(i), new Color(0, 0, 0, 0));
      }
    }
    axis.setCategoryLabelPositions(CategoryLabelPositions.UP_90);
  }

  private static void look(CategoryAxis axis) {
    axis.setTickLabelFont(Typefaces.text(SMALL, false));
    axis.setLabelFont(Typefaces.text(SMALL, false));
    axis.setTickLabelPaint(Palette.INK);
    axis.setLabelPaint(Palette.QUIET);
    axis.setAxisLinePaint(Palette.QUIET);
    axis.setTickMarksVisible(false);
  }

  private NumberAxis numbers(String title, boolean fromZero) {
    NumberAxis axis = new NumberAxis(title(title));
    axis.setAutoRangeIncludesZero(fromZero);
    look(axis);
    axis.setNumberFormatOverride(plainNumbers());
    return axis;
  }

  private static void look(ValueAxis axis) {
    axis.setTickLabelFont(Typefaces.text(SMALL, false));
    axis.setLabelFont(Typefaces.text(SMALL, false));
    axis.setTickLabelPaint(Palette.INK);
    axis.setLabelPaint(Palette.QUIET);
    axis.setAxisLinePaint(Palette.QUIET);
    axis.setTickMarkPaint(Palette.QUIET);
    axis.setUpperMargin(0.08);
  }

  /** An empty title takes no room. */
  private static @Nullable String title(String words) {
    return words.isBlank() ? null : words;
  }

  private DecimalFormat plainNumbers() {
    return new DecimalFormat("#,##0.##", DecimalFormatSymbols.getInstance(numbers));
  }

  private static void includeLimits(ValueAxis axis, List<Chart.Limit> limits) {
    for (Chart.Limit limit : limits) {
      double room = limit.value() + Math.abs(limit.value()) * 0.1;
      if (room > axis.getUpperBound()) {
        axis.setUpperBound(room);
      }
      if (limit.value() < axis.getLowerBound()) {
        axis.setLowerBound(limit.value());
      }
    }
  }

  static BasicStroke limitStroke() {
    return new BasicStroke(
        1.1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {7, 3}, 0);
  }

  private static ValueMarker marker(Chart.Limit limit) {
    ValueMarker marker = new ValueMarker(limit.value());
    marker.setPaint(Palette.INK);
    marker.setStroke(limitStroke());
    marker.setLabel(limit.name());
    marker.setLabelFont(Typefaces.text(SMALL, true));
    marker.setLabelPaint(Palette.INK);
    marker.setLabelBackgroundColor(Color.WHITE);
    marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
    marker.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
    marker.setLabelOffset(new RectangleInsets(2, 4, 2, 4));
    return marker;
  }

  private static ValueMarker upright(Chart.Limit limit) {
    ValueMarker marker = marker(limit);
    marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
    marker.setLabelTextAnchor(TextAnchor.TOP_LEFT);
    return marker;
  }

  private static XYPlot plain(XYSeriesCollection data, ValueAxis across, ValueAxis up) {
    XYPlot plot = new XYPlot(data, across, up, null);
    plot.setOutlineVisible(false);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(GRID);
    plot.setRangeGridlineStroke(new BasicStroke(0.6f));
    plot.setDomainGridlinesVisible(false);
    plot.setInsets(new RectangleInsets(2, 2, 2, 8));
    return plot;
  }

  private Plot lines(Chart.Lines chart) {
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
    renderer.setDrawSeriesLineAsPath(true);
    for (int i = 0; i < chart.lines().size(); i++) {
      Chart.Line line = chart.lines().get(i);
      XYSeries series = new XYSeries(i, false, true);
      line.points().forEach(point -> series.add(point.x(), point.y()));
      data.addSeries(series);
      SeriesStyle style = SeriesStyle.at(i);
      renderer.setSeriesPaint(i, style.line());
      renderer.setSeriesStroke(i, style.stroke(1.6f, line.dashed()));
      renderer.setSeriesShape(i, style.marker());
      renderer.setSeriesShapesVisible(i, line.points().size() <= 60);
    }
    NumberAxis up = numbers(chart.up(), true);
    XYPlot plot = plain(data, numbers(chart.across(), false), up);
    plot.setRenderer(renderer);
    chart.limits().forEach(limit -> plot.addRangeMarker(marker(limit), Layer.FOREGROUND));
    chart.marks().forEach(mark -> plot.addDomainMarker(upright(mark), Layer.FOREGROUND));
    includeLimits(up, chart.limits());
    return plot;
  }

  private Plot dots(Chart.Dots chart) {
    XYSeriesCollection jobs = new XYSeriesCollection();
    XYIntervalSeriesCollection intervals = new XYIntervalSeriesCollection();
    XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
    XYErrorRenderer bars = new XYErrorRenderer();
    String[] names = new String[chart.groups().size()];
    for (int i = 0; i < names.length; i++) {
      Chart.DotGroup group = chart.groups().get(i);
      names[i] = group.name();
      jobs.addSeries(spread(group, i));
      SeriesStyle style = SeriesStyle.at(0);
      dots.setSeriesShape(i, i % 2 == 0 ? SeriesStyle.at(1).marker() : SeriesStyle.at(3).marker());
      dots.setSeriesShapesFilled(i, false);
      dots.setSeriesPaint(i, Palette.QUIET);
      XYIntervalSeries interval = new XYIntervalSeries(i);
      int at = i;
      group
          .interval()
          .ifPresent(value -> interval.add(at, at, at, value.value(), value.low(), value.high()));
      intervals.addSeries(interval);
      bars.setSeriesPaint(i, style.line());
      bars.setSeriesShape(i, style.marker());
      bars.setSeriesShapesFilled(i, true);
      bars.setSeriesStroke(i, new BasicStroke(2f));
    }
    bars.setDrawXError(false);
    bars.setErrorStroke(new BasicStroke(1.8f));
    bars.setCapLength(9);
    SymbolAxis across = new SymbolAxis(title(chart.across()), names);
    across.setGridBandsVisible(false);
    across.setRange(-0.6, names.length - 0.4);
    look(across);
    XYPlot plot = plain(jobs, across, numbers(chart.up(), true));
    plot.setRenderer(0, dots);
    plot.setDataset(1, intervals);
    plot.setRenderer(1, bars);
    return plot;
  }

  /** Dots of one value would hide each other: they stand side by side, always in the same way. */
  private static XYSeries spread(Chart.DotGroup group, int at) {
    XYSeries series = new XYSeries(at, false, true);
    List<Double> values = group.values();
    for (int i = 0; i < values.size(); i++) {
      double shift = ((i * 7) % 11 - 5) / 5.0 * 0.18;
      series.add(at + shift, values.get(i));
    }
    return series;
  }

  /** Bars with the fill and hatching of their series. */
  private static final class StyledBars implements BarPainter {
    @Override
    public void paintBar(
        Graphics2D pen,
        BarRenderer renderer,
        int row,
        int column,
        RectangularShape bar,
        RectangleEdge base) {
      if (bar.getWidth() > 0 && bar.getHeight() > 0) {
        SeriesStyle.at(row).paint(pen, bar.getFrame());
      }
    }

    @Override
    public void paintBarShadow(
        Graphics2D pen,
        BarRenderer renderer,
        int row,
        int column,
        RectangularShape bar,
        RectangleEdge base,
        boolean pegShadow) {
      // Bars throw no shadow.
    }
  }
}
