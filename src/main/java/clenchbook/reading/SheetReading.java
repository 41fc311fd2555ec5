package clenchbook.reading;

import clenchbook.book.SheetControl;
import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.DateText;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.cells.TableSense;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.recognise.SheetHead;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.recognise.SheetPlan;
import clenchbook.reading.recognise.TableFinder;
import clenchbook.reading.rows.BookDraft;
import clenchbook.reading.rows.SheetRows;
import clenchbook.reading.rows.SheetTables;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.io.IOException;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Reads one sheet, row by row. A second time where its end says how its rows are meant: merged
 * cells that speak for other rows, or days whose order the column itself settles.
 */
final class SheetReading {
  private final TableSource source;
  private final BookDraft draft;
  private final Runnable rowRead;

  /** Where the rows of a table go, and what is wrong with them. */
  record Target(Predicate<RowCells> reader, Consumer<Problem> problems) {
    static Target none() {
      return new Target(row -> false, problem -> {});
    }
  }

  /** What a first pass found out. */
  private record Knowledge(
      List<MergedCells> merged, Map<String, Map<String, DateText.Order>> orders) {}

  /** How a sheet was read. */
  record Done(SheetControl control, List<SheetRows> tables) {}

  /**
   * The sheet to read.
   *
   * @param tables its known tables
   * @param finder finds more of them
   * @param elsewhere lists that other sheets hold already
   * @param looked the last row that was looked at for tables
   */
  record Sheet(
      SheetHead head,
      List<SheetLayout> tables,
      TableFinder finder,
      Set<SheetKind> elsewhere,
      int looked) {
    Sheet(SheetHead head, List<SheetLayout> tables, TableFinder finder, Set<SheetKind> elsewhere) {
      this(head, tables, finder, elsewhere, last(head.rows()));
    }

    private static int last(List<Row> rows) {
      return rows.isEmpty() ? 0 : rows.get(rows.size() - 1).number();
    }

    /** The same without a look for tables that are not known yet. */
    Sheet plannedOnly() {
      return new Sheet(head, tables, finder, elsewhere, Integer.MAX_VALUE);
    }
  }

  SheetReading(TableSource source, BookDraft draft, Runnable rowRead) {
    this.source = source;
    this.draft = draft;
    this.rowRead = rowRead;
  }

  Done read(Sheet sheet, ReadingRules rules, SheetPlan plan, Function<SheetLayout, Target> targets)
      throws IOException {
    BookDraft.Mark mark = draft.mark();
    Knowledge none = new Knowledge(List.of(), Map.of());
    SheetTables tables = tables(sheet, rules, plan, targets, none);
    List<MergedCells> merged = pass(sheet, tables);
    SheetControl control = tables.finish();
    Map<String, Map<String, DateText.Order>> orders = orders(tables);
    if (tables.isChangedBy(merged) || !orders.isEmpty()) {
      draft.back(mark);
      tables = tables(sheet, rules, plan, targets, new Knowledge(merged, orders));
      pass(sheet, tables);
      control = tables.finish();
    }
    return new Done(control, tables.all());
  }

  private static Map<String, Map<String, DateText.Order>> orders(SheetTables tables) {
    Map<String, Map<String, DateText.Order>> orders = new HashMap<>();
    for (SheetRows table : tables.all()) {
      Map<String, DateText.Order> settled = table.sense().newlySettled();
      if (!settled.isEmpty()) {
        orders.put(place(table.layout()), settled);
      }
    }
    return orders;
  }

  private static String place(SheetLayout layout) {
    return layout.headingRow() + " " + layout.block().first();
  }

  private SheetTables tables(
      Sheet sheet,
      ReadingRules rules,
      SheetPlan plan,
      Function<SheetLayout, Target> targets,
      Knowledge knowledge) {
    return new SheetTables(
        sheet.tables(),
        sheet.looked(),
        (row, titles, running) -> further(sheet, plan, row, titles, running),
        layout -> {
          boolean needless = !sheet.tables().contains(layout) && isHeldElsewhere(sheet, layout);
          Target target = needless ? Target.none() : targets.apply(layout);
          Map<String, DateText.Order> orders =
              knowledge.orders().getOrDefault(place(layout), Map.of());
          TableSense sense = new TableSense(layout.month()::get, orders);
          return new SheetRows(
              layout, rules, sense, knowledge.merged(), target.problems(), target.reader());
        });
  }

  private List<SheetLayout> further(
      Sheet sheet, SheetPlan plan, Row row, List<Row> titles, List<SheetLayout> running) {
    List<SheetLayout> found = sheet.finder().further(sheet.head(), row, titles, running);
    for (SheetLayout layout : found) {
      if (isHeldElsewhere(sheet, layout)) {
        BookName kind = new BookName(layout.kind().title());
        draft.say(
            Problem.note(
                ProblemKind.SHEET_IGNORED,
                new CellRef(layout.name(), layout.headingRow(), ""),
                Message.of("sheets.heldElsewhere", kind),
                Message.of("sheets.oneList", kind)));
      } else {
        plan.sayHeadings(layout);
      }
    }
    return found;
  }

  /** Settings are read before all else, so that they can't stand far down among other rows. */
  private static boolean isHeldElsewhere(Sheet sheet, SheetLayout layout) {
    Set<SheetKind> first = EnumSet.of(SheetKind.SETTINGS, SheetKind.HEADINGS);
    return first.contains(layout.kind())
        || (!SheetPlan.maybeSeveral(layout.kind()) && sheet.elsewhere().contains(layout.kind()));
  }

  private List<MergedCells> pass(Sheet sheet, SheetTables tables) throws IOException {
    try {
      return source.rows(
          sheet.head().index(),
          row -> {
            tables.take(row);
            rowRead.run();
            return true;
          });
    } catch (DamagedSheet damaged) {
      draft.say(
          Problem.note(
              ProblemKind.PART_DAMAGED,
              CellRef.ofSheet(sheet.head().name()),
              Message.of("sheets.damaged"),
              Message.of("sheets.soundCopy")));
      return List.of();
    }
  }
}
