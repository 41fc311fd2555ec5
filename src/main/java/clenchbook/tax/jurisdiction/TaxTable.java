package clenchbook.tax.jurisdiction;

import clenchbook.reports.blocks.FigureTable;
import java.util.List;

/**
 * A table of figures beside the lines.
 *
 * @param title the heading over it on paper
 * @param table the table; one without rows is neither written nor printed
 * @param shape how it is turned for paper
 * @param boxes the boxes that become columns, in order, where it is turned by period; else empty
 */
public record TaxTable(String title, FigureTable table, Shape shape, List<String> boxes) {

  /** How a table is turned for paper. */
  public enum Shape {
    /** As it is. */
    AS_IS,
    /** One row a line, one column a quarter: columns as of {@code quarters}. */
    BY_QUARTER,
    /** One row a period and scheme, one column a box: columns as of {@code vat}. */
    BY_PERIOD
  }

  /** Copies its list. */
  public TaxTable {
    boxes = List.copyOf(boxes);
  }

  /** A table printed as it is. */
  public static TaxTable asIs(String title, FigureTable table) {
    return new TaxTable(title, table, Shape.AS_IS, List.of());
  }

  /** One row a line, one column a quarter. */
  public static TaxTable byQuarter(String title, FigureTable table) {
    return new TaxTable(title, table, Shape.BY_QUARTER, List.of());
  }

  /** One row a period and scheme, with these boxes as columns. */
  public static TaxTable byPeriod(String title, FigureTable table, List<String> boxes) {
    return new TaxTable(title, table, Shape.BY_PERIOD, boxes);
  }
}
