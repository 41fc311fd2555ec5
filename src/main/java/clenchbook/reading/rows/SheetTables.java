package clenchbook.reading.rows;

import clenchbook.book.SheetControl;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.recognise.Block;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.recognise.TableFinder;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The tables of one sheet while it is read from the top: side by side, or one under the other. A
 * row goes to the tables in whose columns it holds something; a heading row ends those above it.
 */
public final class SheetTables {
  private static final int MOST_TITLES = 3;

  /** Finds tables further down than the first rows that were looked at. */
  public interface Further {
    /**
     * The tables whose headings stand in a row.
     *
     * @param titles the rows of one cell right above it
     * @param running the tables that run down to it
     */
    List<SheetLayout> at(Row row, List<Row> titles, List<SheetLayout> running);
  }

  private final String sheet;
  private final List<SheetLayout> planned;
  private final Further further;
  private final Function<SheetLayout, SheetRows> opener;
  private final List<SheetRows> running = new ArrayList<>();
  private final List<SheetRows> all = new ArrayList<>();
  private final List<Row> titles = new ArrayList<>();
  private final RowTally tally = new RowTally();
  private final int looked;
  private int at;

  /**
   * Makes the tables of a sheet.
   *
   * @param planned known tables, by heading row
   * @param looked the last row that was looked at for them
   * @param further finds tables below that
   * @param opener begins to read a table
   */
  public SheetTables(
      List<SheetLayout> planned,
      int looked,
      Further further,
      Function<SheetLayout, SheetRows> opener) {
    this.sheet = planned.get(0).name();
    this.planned = List.copyOf(planned);
    this.looked = looked;
    this.further = further;
    this.opener = opener;
  }

  /** Takes the next row of the sheet. */
  public void take(Row row) {
    if (row.cells().stream().allMatch(RowKind::isBlank)) {
      return;
    }
    List<SheetLayout> begun = begun(row);
    if (!begun.isEmpty()) {
      begin(row, begun);
    } else if (!running.isEmpty()) {
      if (row.cells().size() == 1 && titles.size() < MOST_TITLES) {
        titles.add(row);
      } else {
        settleTitles();
        hand(row);
      }
    }
  }

  private List<SheetLayout> begun(Row row) {
    if (at < planned.size() && planned.get(at).headingRow() == row.number()) {
      List<SheetLayout> here = new ArrayList<>();
      while (at < planned.size() && planned.get(at).headingRow() == row.number()) {
        here.add(planned.get(at++));
      }
      return here;
    }
    return row.number() <= looked || !mayBegin(row)
        ? List.of()
        : further.at(row, titles, running.stream().map(SheetRows::layout).toList());
  }

  private boolean mayBegin(Row row) {
    return TableFinder.mayBeHeadings(row)
        || running.stream().anyMatch(table -> !table.layout().block().equals(Block.WHOLE));
  }

  /** Titles above headings are no rows of the table before, and the headings none either. */
  private void begin(Row row, List<SheetLayout> begun) {
    if (!running.isEmpty()) {
      titles.forEach(title -> tally.row(title.number(), 0));
      titles.clear();
      hand(rest(row, begun), row.number());
    }
    for (SheetLayout layout : begun) {
      running.removeIf(
          table -> {
            boolean ends = table.layout().block().meets(layout.block());
            if (ends) {
              table.finish(tally);
            }
            return ends;
          });
    }
    for (SheetLayout layout : begun) {
      SheetRows table = opener.apply(layout);
      running.add(table);
      all.add(table);
    }
  }

  /** What a heading row of one table holds for the tables beside it. */
  private static Row rest(Row row, List<SheetLayout> begun) {
    return new Row(
        row.number(),
        row.cells().stream()
            .filter(cell -> begun.stream().noneMatch(b -> b.block().holds(cell.column())))
            .toList());
  }

  private void settleTitles() {
    titles.forEach(this::hand);
    titles.clear();
  }

  private void hand(Row row) {
    hand(row, row.number());
  }

  private void hand(Row row, int number) {
    if (running.size() == 1 && running.get(0).layout().block().last() == Integer.MAX_VALUE) {
      Row own = running.get(0).layout().block().of(row);
      tally.row(number, own.cells().isEmpty() ? 0 : 1);
      if (!own.cells().isEmpty()) {
        running.get(0).take(own, tally);
      }
      return;
    }
    List<SheetRows> takers =
        running.stream().filter(table -> holdsAny(table.layout().block().of(row))).toList();
    tally.row(number, takers.size());
    takers.forEach(table -> table.take(table.layout().block().of(row), tally));
  }

  private static boolean holdsAny(Row row) {
    return !row.cells().stream().allMatch(RowKind::isBlank);
  }

  /** Settles what waits for the sheet's end. */
  public SheetControl finish() {
    settleTitles();
    running.forEach(table -> table.finish(tally));
    return tally.control(sheet);
  }

  /** Every table read, in the order of their headings. */
  public List<SheetRows> all() {
    return List.copyOf(all);
  }

  /** Whether merged cells, known only at the sheet's end, speak for other rows. */
  public boolean isChangedBy(List<MergedCells> blocks) {
    return all.stream().anyMatch(table -> table.isChangedBy(blocks));
  }
}
