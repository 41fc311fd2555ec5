package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the tables of a sheet beside and below its main one: side by side with an empty column
 * between, or one under the other, each with headings of its own.
 */
public final class TableFinder {
  private static final int FEWEST_HEADINGS = 2;
  private static final int FEWEST_ROWS_ABOVE = 2;

  private final SheetRecognizer recognizer;

  public TableFinder(SheetRecognizer recognizer) {
    this.recognizer = recognizer;
  }

  /** All tables of a sheet's first rows, where its main one is this. */
  List<SheetLayout> tables(SheetHead head, SheetLayout main) {
    if (main.kind() == SheetKind.HEADINGS) {
      return List.of(main);
    }
    List<SheetLayout> tables = new ArrayList<>(beside(head, row(head, main.headingRow()), main));
    for (Row row : head.rows()) {
      if (tables.stream().noneMatch(table -> table.headingRow() == row.number())) {
        tables.addAll(at(head, row, tables));
      }
    }
    tables.sort(
        Comparator.comparingInt(SheetLayout::headingRow)
            .thenComparing(table -> table.block().first()));
    return tables.stream().map(table -> table.within(month(head, table, tables))).toList();
  }

  /** The tables side by side of a sheet that is none as a whole. */
  List<SheetLayout> apart(SheetHead head) {
    for (Row row : head.rows()) {
      List<SheetLayout> tables = sideBySide(head, row);
      if (!tables.isEmpty()) {
        return tables.stream().map(table -> table.within(month(head, table, tables))).toList();
      }
    }
    return List.of();
  }

  private static Row row(SheetHead head, int number) {
    return head.rows().stream().filter(row -> row.number() == number).findFirst().orElseThrow();
  }

  /** The main table, or those that it falls into. */
  private List<SheetLayout> beside(SheetHead head, Row row, SheetLayout main) {
    List<SheetLayout> tables = sideBySide(head, row);
    boolean mainIsOne = tables.stream().anyMatch(table -> table.kind() == main.kind());
    return tables.size() > 1 && mainIsOne ? tables : List.of(main);
  }

  private List<SheetLayout> sideBySide(SheetHead head, Row row) {
    List<SheetLayout> tables = new ArrayList<>();
    for (Block block : blocks(head, row)) {
      SheetHead alone = new SheetHead(head.name(), head.index(), List.of(row));
      List<SheetRecognizer.Candidate> found = recognizer.byHeadings(alone, block);
      if (found.size() == 1) {
        tables.add(found.get(0).layout().in(block));
      }
    }
    return tables;
  }

  /** The groups of columns that columns without heading and contents part; none for one group. */
  private static List<Block> blocks(SheetHead head, Row row) {
    List<Block> blocks = new ArrayList<>();
    int first = 0;
    int before = -1;
    for (Cell cell : row.cells()) {
      boolean gap = before >= 0 && cell.column() > before + 1;
      if (gap && isEmpty(head, row.number(), before + 1, cell.column() - 1)) {
        blocks.add(new Block(first, cell.column() - 1));
        first = cell.column();
      }
      before = cell.column();
    }
    if (blocks.isEmpty()) {
      return List.of();
    }
    blocks.add(new Block(first, Integer.MAX_VALUE));
    return blocks;
  }

  private static boolean isEmpty(SheetHead head, int above, int first, int last) {
    Block gap = new Block(first, last);
    return head.rows().stream()
        .filter(row -> row.number() > above)
        .allMatch(row -> gap.of(row).cells().isEmpty());
  }

  /**
   * The tables that begin with this row: nothing but headings in it, most of them known, and of one
   * kind only.
   *
   * @param known the tables found so far; the columns of one that runs down to this row are judged
   *     apart from those of its neighbours
   */
  private List<SheetLayout> at(SheetHead head, Row row, List<SheetLayout> known) {
    List<SheetLayout> found = new ArrayList<>();
    if (mayBeHeadings(row)) {
      found.addAll(sideBySide(head, row));
      if (found.isEmpty()) {
        table(head, row, Block.WHOLE).ifPresent(found::add);
      }
    } else {
      known.stream()
          .map(SheetLayout::block)
          .filter(block -> !block.equals(Block.WHOLE) && mayBeHeadings(block.of(row)))
          .distinct()
          .forEach(block -> table(head, row, block).ifPresent(found::add));
    }
    found.removeIf(table -> isAgain(table, known) || isTitle(head, table, known));
    return found;
  }

  /**
   * The tables that begin with a row further down than the first rows.
   *
   * @param titles the rows right above it that hold one cell each
   * @param running the tables that run down to it
   */
  public List<SheetLayout> further(
      SheetHead head, Row row, List<Row> titles, List<SheetLayout> running) {
    List<Row> rows = new ArrayList<>(titles);
    rows.add(row);
    SheetHead here = new SheetHead(head.name(), head.index(), rows);
    List<SheetLayout> found = at(here, row, running);
    return found.stream().map(table -> table.within(month(here, table, running))).toList();
  }

  /** Names and values above a table, such as the business's own, are no list. */
  private static boolean isTitle(SheetHead head, SheetLayout table, List<SheetLayout> known) {
    int below =
        known.stream()
            .mapToInt(SheetLayout::headingRow)
            .filter(row -> row > table.headingRow())
            .min()
            .orElse(Integer.MAX_VALUE);
    long between =
        head.rows().stream()
            .filter(row -> row.number() > table.headingRow() && row.number() < below)
            .count();
    return below < Integer.MAX_VALUE && between < FEWEST_ROWS_ABOVE;
  }

  /** Cheap to tell for rows of data: they hold days, numbers, or texts that begin with a figure. */
  public static boolean mayBeHeadings(Row row) {
    if (row.cells().size() < FEWEST_HEADINGS) {
      return false;
    }
    for (Cell cell : row.cells()) {
      boolean heading =
          cell instanceof Cell.Text text
              && !text.formula()
              && text.text().length() <= HeadingReader.LONGEST_HEADING
              && !text.text().isEmpty()
              && !Character.isDigit(text.text().charAt(0));
      if (!heading) {
        return false;
      }
    }
    return true;
  }

  private Optional<SheetLayout> table(SheetHead head, Row row, Block block) {
    SheetHead alone = new SheetHead(head.name(), head.index(), List.of(row));
    List<SheetRecognizer.Candidate> found = recognizer.byHeadings(alone, block);
    if (found.size() != 1 || found.get(0).layout().kind() == SheetKind.HEADINGS) {
      return Optional.empty();
    }
    SheetLayout layout = found.get(0).layout();
    int cells = block.of(row).cells().size();
    boolean mostKnown =
        layout.columns().size() >= FEWEST_HEADINGS && layout.columns().size() * 2 >= cells;
    return mostKnown ? Optional.of(layout) : Optional.empty();
  }

  /** The same headings once more, as on a second printed page, begin no other table. */
  private static boolean isAgain(SheetLayout table, List<SheetLayout> known) {
    return known.stream()
        .filter(other -> other.headingRow() < table.headingRow())
        .anyMatch(other -> texts(other).equals(texts(table)));
  }

  private static List<String> texts(SheetLayout table) {
    return table.headings().cells().stream()
        .map(cell -> cell.cell().column() + " " + cell.cell().shown())
        .toList();
  }

  private static MonthOfSheet month(SheetHead head, SheetLayout table, List<SheetLayout> all) {
    int above =
        all.stream()
            .mapToInt(SheetLayout::headingRow)
            .filter(row -> row < table.headingRow())
            .max()
            .orElse(0);
    List<Row> titles =
        head.rows().stream()
            .filter(row -> row.number() > above && row.number() < table.headingRow())
            .filter(row -> above == 0 || row.cells().size() == 1)
            .toList();
    return new MonthOfSheet(head.name(), titles);
  }
}
