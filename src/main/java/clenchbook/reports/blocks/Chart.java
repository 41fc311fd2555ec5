package clenchbook.reports.blocks;

import java.util.List;
import java.util.Optional;

/** The data of a picture; how it is drawn is the writer's. Doubles are for drawing only. */
public sealed interface Chart {
  /**
   * The horizontal axis.
   *
   * @return its title with unit
   */
  String across();

  /**
   * The vertical axis.
   *
   * @return its title with unit
   */
  String up();

  /**
   * Columns or bars by category, stacked or side by side.
   *
   * @param across title of the categories
   * @param up title of the values
   * @param categories the categories in order
   * @param series the series; each has one value per category
   * @param stacked true to stack the series
   * @param lying true to draw bars to the right instead of columns
   * @param limits horizontal lines across the picture
   */
  record Columns(
      String across,
      String up,
      List<String> categories,
      List<Series> series,
      boolean stacked,
      boolean lying,
      List<Limit> limits)
      implements Chart {
    /** Copies its lists. */
    public Columns {
      categories = List.copyOf(categories);
      series = List.copyOf(series);
      limits = List.copyOf(limits);
    }
  }

  /**
   * Named values, one per category.
   *
   * @param name the name
   * @param values the values
   * @param labels what stands at each value's end, written as people read it; empty for no labels,
   *     a blank one for none at that value
   */
  record Series(String name, List<Double> values, List<String> labels) {
    /** Copies its lists. */
    public Series {
      values = List.copyOf(values);
      labels = List.copyOf(labels);
      if (!labels.isEmpty() && labels.size() != values.size()) {
        throw new IllegalArgumentException(name + ": " + labels + " for " + values);
      }
    }

    /**
     * Values without labels.
     *
     * @param name the name
     * @param values the values
     */
    public Series(String name, List<Double> values) {
      this(name, values, List.of());
    }
  }

  /**
   * Differences as dots with their intervals as lines, all about one zero, each on a scale of its
   * own.
   *
   * @param below what a dot left of zero says, such as {@code hot takes less}
   * @param above what a dot right of zero says
   * @param rows from the top down
   */
  record Intervals(String below, String above, List<IntervalRow> rows) implements Chart {
    /** Copies its list. */
    public Intervals {
      rows = List.copyOf(rows);
    }

    @Override
    public String across() {
      return "";
    }

    @Override
    public String up() {
      return "";
    }
  }

  /**
   * One difference.
   *
   * @param name what differs
   * @param interval the difference and its interval
   * @param text the same in figures
   */
  record IntervalRow(String name, Interval interval, String text) {}

  /**
   * A line across the picture.
   *
   * @param name what it is
   * @param value where
   */
  record Limit(String name, double value) {}

  /**
   * Lines through points, as a curve over a quantity.
   *
   * @param across title of x
   * @param up title of y
   * @param lines the lines
   * @param limits horizontal lines
   * @param marks vertical lines
   */
  record Lines(String across, String up, List<Line> lines, List<Limit> limits, List<Limit> marks)
      implements Chart {
    /** Copies its lists. */
    public Lines {
      lines = List.copyOf(lines);
      limits = List.copyOf(limits);
      marks = List.copyOf(marks);
    }
  }

  /**
   * One line.
   *
   * @param name the name
   * @param points its points, in order of x
   * @param dashed true for a projection or comparison
   */
  record Line(String name, List<Point> points, boolean dashed) {
    /** Copies its list. */
    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * A point.
   *
   * @param x across
   * @param y up
   */
  record Point(double x, double y) {}

  /**
   * Dots of single jobs by group, with a value and interval per group.
   *
   * @param across title of the groups
   * @param up title of the values
   * @param groups the groups
   */
  record Dots(String across, String up, List<DotGroup> groups) implements Chart {
    /** Copies its list. */
    public Dots {
      groups = List.copyOf(groups);
    }
  }

  /**
   * One group of dots.
   *
   * @param name the name
   * @param values the single jobs
   * @param interval the group's mean or difference with its interval
   */
  record DotGroup(String name, List<Double> values, Optional<Interval> interval) {
    /** Copies its list. */
    public DotGroup {
      values = List.copyOf(values);
    }
  }

  /**
   * A value with its interval.
   *
   * @param value the value
   * @param low lower end
   * @param high upper end
   */
  record Interval(double value, double low, double high) {}
}
