package clenchbook.print.tags;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import net.sf.jasperreports.engine.JRPrintElement;
import org.jspecify.annotations.Nullable;

/**
 * Brings the cells of a table that lie about a page into rows of equally many columns. The columns
 * are those of the first row; a later cell belongs to those it stands under, and where none stands,
 * an empty cell does.
 */
final class TableTags {
  private record Column(int left, int right) {}

  private record Cell(int first, int last, TagNode node) {}

  private final TagNode table;
  private final List<Column> columns = new ArrayList<>();
  private final List<Cell> cells = new ArrayList<>();
  private @Nullable TagNode row;
  private boolean first = true;

  TableTags(TagNode table) {
    this.table = table;
  }

  /** Begins another row. */
  void row() {
    finish();
    row = table.add("TR");
  }

  /**
   * The part that a cell's text goes to.
   *
   * @param element where it lies
   * @param heads true for the head of a column
   */
  TagNode cell(JRPrintElement element, boolean heads) {
    if (row == null) {
      row();
    }
    int left = element.getX();
    int right = left + element.getWidth();
    if (first) {
      columns.add(new Column(left, right));
      return take(columns.size() - 1, columns.size() - 1, heads);
    }
    int from = columnAt(left, right);
    int to = from;
    while (from > 0 && covers(columns.get(from - 1), left, right)) {
      from--;
    }
    while (to + 1 < columns.size() && covers(columns.get(to + 1), left, right)) {
      to++;
    }
    return take(from, to, heads);
  }

  private TagNode take(int from, int to, boolean heads) {
    for (Cell cell : cells) {
      if (cell.first() <= from && from <= cell.last()) {
        return cell.node();
      }
    }
    TagNode node = Objects.requireNonNull(row, "begun before").apart(heads ? "TH" : "TD");
    int last = to;
    for (Cell cell : cells) {
      last = cell.first() > from ? Math.min(last, cell.first() - 1) : last;
    }
    cells.add(new Cell(from, last, node));
    return node;
  }

  /** The column it has most in common with; without any, the last one to its left. */
  private int columnAt(int left, int right) {
    int best = -1;
    int nearest = 0;
    for (int i = 0; i < columns.size(); i++) {
      int common = common(columns.get(i), left, right);
      best = common > 0 && (best < 0 || common > common(columns.get(best), left, right)) ? i : best;
      nearest = columns.get(i).left() <= left ? i : nearest;
    }
    return best < 0 ? nearest : best;
  }

  private static boolean covers(Column column, int left, int right) {
    return 2 * common(column, left, right) >= column.right() - column.left();
  }

  private static int common(Column column, int left, int right) {
    return Math.min(column.right(), right) - Math.max(column.left(), left);
  }

  /** Puts the cells of the last row in order; called before something else than a cell comes. */
  void finish() {
    TagNode done = row;
    if (done == null) {
      return;
    }
    if (first) {
      first = columns.isEmpty();
    }
    cells.sort(Comparator.comparingInt(Cell::first));
    int next = 0;
    for (Cell cell : cells) {
      fill(done, next, cell.first());
      dress(cell);
      done.place(cell.node());
      next = cell.last() + 1;
    }
    fill(done, next, columns.size());
    cells.clear();
    row = null;
  }

  private static void fill(TagNode row, int from, int to) {
    for (int i = from; i < to; i++) {
      row.add("TD");
    }
  }

  private static void dress(Cell cell) {
    String span = cell.last() > cell.first() ? "/ColSpan " + (cell.last() - cell.first() + 1) : "";
    String scope = cell.node().type().equals("TH") ? "/Scope/Column" : "";
    if (!span.isEmpty() || !scope.isEmpty()) {
      cell.node().say("/A<</O/Table" + scope + span + ">>");
    }
  }
}
