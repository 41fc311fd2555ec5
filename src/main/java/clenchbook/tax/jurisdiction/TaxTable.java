package clenchbook.tax.jurisdiction;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.page.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of figures beside the lines.
 *
 * @param title the heading over it on paper, in English
 * @param table the table; one without rows is neither written nor printed
 * @param shape how it is turned for paper
 * @param boxes the boxes that become columns, in order, where it is turned by period; else empty
 * @param left columns of the file that paper leaves out
 * @param onPage whether it stands on the preparer's own sheets rather than in the annex
 * @param remarks what must be said beneath it, such as what in it is from memory
 */
public record TaxTable(
    String title,
    FigureTable table,
    Shape shape,
    List<String> boxes,
    List<String> left,
    boolean onPage,
    List<Sentence> remarks) {

  /** How a table is turned for paper. */
  public enum Shape {
    /** As it is. */
    AS_IS,
    /** One row a line, one column a quarter: columns as of {@code quarters}. */
    BY_QUARTER,
    /** One row a period and scheme, one column a box: columns as of {@code vat}. */
    BY_PERIOD
  }

  /** Copies its lists. */
  public TaxTable {
    boxes = List.copyOf(boxes);
    left = List.copyOf(left);
    remarks = List.copyOf(remarks);
  }

  private static TaxTable of(String title, FigureTable table, Shape shape, List<String> boxes) {
    return new TaxTable(title, table, shape, boxes, List.of(), false, List.of());
  }

  /** A table printed as it is. */
  public static TaxTable asIs(String title, FigureTable table) {
    return of(title, table, Shape.AS_IS, List.of());
  }

  /** One row a line, one column a quarter. */
  public static TaxTable byQuarter(String title, FigureTable table) {
    return of(title, table, Shape.BY_QUARTER, List.of());
  }

  /** One row a period and scheme, with these boxes as columns. */
  public static TaxTable byPeriod(String title, FigureTable table, List<String> boxes) {
    return of(title, table, Shape.BY_PERIOD, boxes);
  }

  /** The same on the preparer's own sheets. */
  public TaxTable placedOnPage() {
    return new TaxTable(title, table, shape, boxes, left, true, remarks);
  }

  /** The same without some columns on paper. */
  public TaxTable without(String... columns) {
    return new TaxTable(title, table, shape, boxes, List.of(columns), onPage, remarks);
  }

  /** The same with something more to say beneath it. */
  public TaxTable remarked(Sentence remark) {
    List<Sentence> more = new ArrayList<>(remarks);
    more.add(remark);
    return new TaxTable(title, table, shape, boxes, left, onPage, more);
  }
}
