package clenchbook.tax.jurisdiction;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A table of figures beside the lines.
 *
 * @param title the heading over it on paper
 * @param table the table; one without rows is neither written nor printed
 * @param shape how it is turned for paper
 * @param boxes the boxes that become columns, in order, where it is turned by period; else empty
 * @param paper what paper says in other words than the file
 * @param onPage whether it stands on the preparer's own sheets rather than in the annex
 * @param remarks what must be said beneath it, such as what in it is from memory
 */
public record TaxTable(
    Message title,
    FigureTable table,
    Shape shape,
    List<String> boxes,
    Paper paper,
    boolean onPage,
    List<Message> remarks) {

  /** How a table is turned for paper. */
  public enum Shape {
    /** As it is. */
    AS_IS,
    /** One row a line, one column a quarter: columns as of {@code quarters}. */
    BY_QUARTER,
    /** One row a period and scheme, one column a box: columns as of {@code vat}. */
    BY_PERIOD
  }

  /**
   * What paper says in other words than the file, by the file's column.
   *
   * @param left columns that paper leaves out
   * @param heads headings; a column without one has that of the common columns
   * @param cells what it says of each row; a column without them has the file's cells
   */
  public record Paper(
      List<String> left, Map<String, Message> heads, Map<String, List<Message>> cells) {
    /** Nothing but what the file says, under the headings of the common columns. */
    public static final Paper AS_FILED = new Paper(List.of(), Map.of(), Map.of());

    /** Copies its lists. */
    public Paper {
      left = List.copyOf(left);
      heads = Map.copyOf(heads);
      cells = Map.copyOf(cells);
    }

    private Paper without(List<String> columns) {
      return new Paper(columns, heads, cells);
    }

    private Paper headed(String column, Message heading) {
      return new Paper(left, with(heads, column, heading), cells);
    }

    private Paper said(String column, List<Message> rows) {
      return new Paper(left, heads, with(cells, column, rows));
    }

    private static <T> Map<String, T> with(Map<String, T> map, String column, T more) {
      Map<String, T> copy = new TreeMap<>(map);
      copy.put(column, more);
      return copy;
    }
  }

  /** Copies its lists. */
  public TaxTable {
    boxes = List.copyOf(boxes);
    remarks = List.copyOf(remarks);
  }

  private static TaxTable of(Message title, FigureTable table, Shape shape, List<String> boxes) {
    return new TaxTable(title, table, shape, boxes, Paper.AS_FILED, false, List.of());
  }

  /** A table printed as it is. */
  public static TaxTable asIs(Message title, FigureTable table) {
    return of(title, table, Shape.AS_IS, List.of());
  }

  /** One row a line, one column a quarter. */
  public static TaxTable byQuarter(Message title, FigureTable table) {
    return of(title, table, Shape.BY_QUARTER, List.of());
  }

  /** One row a period and scheme, with these boxes as columns. */
  public static TaxTable byPeriod(Message title, FigureTable table, List<String> boxes) {
    return of(title, table, Shape.BY_PERIOD, boxes);
  }

  /** The same on the preparer's own sheets. */
  public TaxTable placedOnPage() {
    return new TaxTable(title, table, shape, boxes, paper, true, remarks);
  }

  /** The same without some columns on paper. */
  public TaxTable without(String... columns) {
    return on(paper.without(List.of(columns)));
  }

  /**
   * The same with a heading on paper over a column that only this table has.
   *
   * @param column its name in the file
   * @param heading what paper says
   */
  public TaxTable headed(String column, Message heading) {
    return on(paper.headed(column, heading));
  }

  /**
   * The same with words on paper for a column's cells.
   *
   * @param column the column's name in the file
   * @param rows what paper says, one for each row of the file
   * @throws IllegalArgumentException for another number of rows
   */
  public TaxTable said(String column, List<Message> rows) {
    if (rows.size() != table.rows().size()) {
      throw new IllegalArgumentException(column + ": " + rows.size() + " words for the rows");
    }
    return on(paper.said(column, rows));
  }

  /**
   * The same with words on paper for a column's cells.
   *
   * @param column the column's name in the file
   * @param word what paper says for a cell of the file
   */
  public TaxTable said(String column, Function<String, Message> word) {
    int at = table.columns().indexOf(column);
    return said(column, table.rows().stream().map(row -> word.apply(row.get(at))).toList());
  }

  private TaxTable on(Paper other) {
    return new TaxTable(title, table, shape, boxes, other, onPage, remarks);
  }

  /** The same with something more to say beneath it. */
  public TaxTable remarked(Message remark) {
    List<Message> more = new ArrayList<>(remarks);
    more.add(remark);
    return new TaxTable(title, table, shape, boxes, paper, onPage, more);
  }
}
