package clenchbook.reading.rows;

import clenchbook.book.SheetKind;
import clenchbook.book.SourceRow;
import clenchbook.problem.Problem;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.cells.TableSense;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.recognise.MonthOfSheet;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.starter.ExampleRows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * The rows of one table below its headings: each is blank, no data, held back or used, and counted
 * as such.
 */
public final class SheetRows {
  /** What a merged cell speaks for in the rows beside it; an amount is never counted twice. */
  private static final Set<String> SPREAD =
      Set.of("Date", "Place", "Owner", "Horse", "Supplier", "Vehicle");

  private static final Map<SheetKind, String> KEYS =
      Map.ofEntries(
          Map.entry(SheetKind.WORK, "Work"),
          Map.entry(SheetKind.MATERIALS, "Item"),
          Map.entry(SheetKind.OWNERS, "Owner"),
          Map.entry(SheetKind.HORSES, "Horse"),
          Map.entry(SheetKind.PLACES, "Place"),
          Map.entry(SheetKind.ASSETS, "Asset"),
          Map.entry(SheetKind.TAX, "Code"),
          Map.entry(SheetKind.STRAIN, "Task"),
          Map.entry(SheetKind.SETTINGS, "Setting"),
          Map.entry(SheetKind.HEADINGS, "Means"));

  private static final class Examples {
    static final ExampleRows ROWS = ExampleRows.load();
  }

  private final SheetLayout layout;
  private final String[] headings;
  private final int[] slots;
  private final String key;
  private final int leftmost;
  private final ReadingRules rules;
  private final TableSense sense;
  private final Consumer<Problem> problems;
  private final Predicate<RowCells> reader;
  private final List<MergedCells> merged;
  private final UnreadColumns unread;
  private final CarriedCells carried;
  private final Map<MergedCells, Cell> spread = new HashMap<>();
  private final Map<String, String> headingTexts = new HashMap<>();
  private final List<Integer> examples = new ArrayList<>();
  private Map<String, Cell> waiting = Map.of();
  private int waitingRow;
  private int data;

  /**
   * Counts and hands on the rows of a table.
   *
   * @param sense what the table's cells say of each other
   * @param merged blocks whose first cell speaks for all their rows
   * @param problems takes what is wrong with cells
   * @param reader takes a row of data; true when it is used
   */
  public SheetRows(
      SheetLayout layout,
      ReadingRules rules,
      TableSense sense,
      List<MergedCells> merged,
      Consumer<Problem> problems,
      Predicate<RowCells> reader) {
    this.layout = layout;
    this.headings = layout.headingNames().toArray(String[]::new);
    this.slots = layout.slots();
    this.key = KEYS.getOrDefault(layout.kind(), "Date");
    this.leftmost = key.equals("Date") ? layout.columns().values().iterator().next() : -1;
    this.sense = sense;
    this.merged = merged.stream().filter(this::speaks).toList();
    this.problems = problems;
    this.reader = reader;
    this.unread = new UnreadColumns(slots);
    this.carried = new CarriedCells(layout);
    layout
        .headings()
        .cells()
        .forEach(cell -> headingTexts.put(cell.heading(), cell.cell().shown()));
    this.rules = rules.under(headingTexts);
    HeadingCurrency.say(layout, rules, problems);
  }

  public SheetLayout layout() {
    return layout;
  }

  public TableSense sense() {
    return sense;
  }

  /** What stands in the columns that are not read. */
  public UnreadColumns unread() {
    return unread;
  }

  /** The rows that are the starter's examples, as it wrote them. */
  public List<Integer> examples() {
    return List.copyOf(examples);
  }

  /** Whether examples stand in the table and nothing else. */
  boolean holdsExamplesAlone() {
    return !examples.isEmpty() && data == 0;
  }

  private boolean speaks(MergedCells block) {
    int slot = block.firstColumn() < slots.length ? slots[block.firstColumn()] : -1;
    return block.lastRow() > layout.headingRow() && slot >= 0 && SPREAD.contains(headings[slot]);
  }

  /** Whether any of these blocks would change how the table reads. */
  boolean isChangedBy(List<MergedCells> blocks) {
    return blocks.stream().anyMatch(this::speaks);
  }

  /** Takes the next row of the table, one that holds something, below its headings. */
  void take(Row row, RowTally tally) {
    settleWaiting(false, tally);
    if (turnsMonth(row)) {
      tally.end(row.number(), RowTally.End.IGNORED);
      return;
    }
    carried.pass(row.number());
    unread.take(row);
    Map<String, Cell> known = known(row);
    spreadMerged(row.number(), known);
    boolean noData =
        known.isEmpty()
            || RowKind.isFilledDown(known)
            || RowKind.isTotals(row.cells(), known, key, this::isDay)
            || RowKind.isHeadingsAgain(known, headingTexts)
            || carried.isHeadOfGroup(known);
    if (noData) {
      tally.end(row.number(), RowTally.End.IGNORED);
    } else if (RowKind.isBareSums(known, key)) {
      waiting = known;
      waitingRow = row.number();
    } else {
      read(row.number(), known, tally);
    }
  }

  /** Whether a row is a month's title among the days, which counts from here on. */
  private boolean turnsMonth(Row row) {
    if (row.cells().size() > 1 && layout.kind() != SheetKind.VISITS) {
      return false;
    }
    Optional<MonthOfSheet.Turn> turn = layout.month().turn(row, leftmost, sense.month());
    turn.ifPresent(found -> sense.turnTo(found.month()));
    return turn.isPresent();
  }

  private Map<String, Cell> known(Row row) {
    Map<String, Cell> known = new LinkedHashMap<>();
    for (Cell cell : row.cells()) {
      int slot = cell.column() < slots.length ? slots[cell.column()] : -1;
      if (slot >= 0 && !RowKind.isBlank(cell)) {
        known.put(headings[slot], cell);
      }
    }
    return known;
  }

  private void spreadMerged(int row, Map<String, Cell> known) {
    for (MergedCells block : merged) {
      if (row >= block.firstRow() && row <= block.lastRow()) {
        String heading = headings[slots[block.firstColumn()]];
        Cell own = known.get(heading);
        if (row == block.firstRow() && own != null) {
          spread.put(block, own);
        } else if (own == null && spread.containsKey(block)) {
          known.put(heading, spread.get(block));
        }
      }
    }
  }

  /** Sums without a word are no data where they end the table, else a row without its day. */
  private void settleWaiting(boolean atFoot, RowTally tally) {
    if (waiting.isEmpty()) {
      return;
    }
    Map<String, Cell> row = waiting;
    waiting = Map.of();
    if (atFoot) {
      tally.end(waitingRow, RowTally.End.IGNORED);
    } else {
      read(waitingRow, row, tally);
    }
  }

  private void read(int number, Map<String, Cell> known, RowTally tally) {
    if (Examples.ROWS.holds(layout.kind().title(), known)) {
      examples.add(number);
      tally.end(number, RowTally.End.IGNORED);
      return;
    }
    data++;
    carried.fill(known);
    SourceRow source = new SourceRow(layout.name(), layout.index(), number, layout.letters());
    RowCells row = new RowCells(source, layout.kind(), known, rules, sense, problems);
    boolean taken = reader.test(row);
    if (row.held()) {
      tally.end(number, RowTally.End.HELD);
    } else {
      tally.end(number, taken ? RowTally.End.USED : RowTally.End.IGNORED);
    }
  }

  /** A number is a day where the month is known. */
  private boolean isDay() {
    return sense.month().isPresent();
  }

  /** Settles what waits for the table's end. */
  void finish(RowTally tally) {
    settleWaiting(true, tally);
  }
}
