package clenchbook.reading;

import clenchbook.book.SheetKind;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.proposal.Column;
import clenchbook.reading.proposal.HeadingRow;
import clenchbook.reading.proposal.TableContents;
import clenchbook.reading.recognise.Block;
import clenchbook.reading.recognise.HeadingCell;
import clenchbook.reading.recognise.SheetHead;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.recognise.SheetRecognizer;
import clenchbook.reading.words.OwnWords;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Gathers the headings and first rows of every table and unread sheet of a book. */
final class TableGathering {
  private static final int MOST_SHEETS = 120;
  private static final int MOST_ROWS = 600;
  private static final int MOST_COLUMNS = 60;
  private static final int MOST_CELLS = 30_000;
  private static final Set<SheetKind> OF_THE_PROGRAM =
      EnumSet.of(SheetKind.HEADINGS, SheetKind.SETTINGS, SheetKind.STRAIN);

  private final TableSource source;
  private final SheetRecognizer recognizer;
  private final OwnWords own;

  TableGathering(TableSource source, SheetRecognizer recognizer, OwnWords own) {
    this.source = source;
    this.recognizer = recognizer;
    this.own = own;
  }

  List<TableContents> tables(List<SheetHead> heads, List<SheetLayout> layouts) throws IOException {
    List<TableContents> tables = new ArrayList<>();
    for (SheetHead head : heads.subList(0, Math.min(MOST_SHEETS, heads.size()))) {
      List<SheetLayout> here = layouts.stream().filter(l -> l.index() == head.index()).toList();
      if (here.isEmpty()) {
        unread(head).ifPresent(tables::add);
      } else {
        for (SheetLayout layout : here) {
          tables.add(table(head, layout, here));
        }
      }
    }
    return tables;
  }

  private TableContents table(SheetHead head, SheetLayout layout, List<SheetLayout> here)
      throws IOException {
    int end =
        here.stream()
            .filter(other -> other.block().meets(layout.block()))
            .mapToInt(SheetLayout::headingRow)
            .filter(row -> row > layout.headingRow())
            .min()
            .orElse(Integer.MAX_VALUE);
    List<Row> rows = rows(head.index(), layout.headingRow(), end);
    List<Column> columns = new ArrayList<>();
    for (HeadingCell heading : layout.headings().cells()) {
      boolean settled = heading.told() || isSettled(layout, heading);
      if (!heading.cell().shown().isBlank() && columns.size() < MOST_COLUMNS) {
        columns.add(column(heading.cell(), heading.heading(), settled, rows));
      }
    }
    boolean named = here.size() > 1 || recognizer.kindByName(head.name()).isPresent();
    boolean ours = OF_THE_PROGRAM.contains(layout.kind());
    return new TableContents(
        head.name(),
        Optional.of(layout.kind()),
        named || ours,
        layout.headings().named().map(Set::of).orElse(Set.of()),
        columns);
  }

  /** What the farrier has said something of, or another column means, is not guessed. */
  private boolean isSettled(SheetLayout layout, HeadingCell heading) {
    boolean twice =
        layout.headings().twice().stream()
            .anyMatch(each -> each.later().column() == heading.cell().column());
    String title = layout.kind().title();
    return twice || own.meaning(layout.name(), title, heading.cell().shown()).isPresent();
  }

  /** A sheet that is not read; one that is left out beside another of its kind is no riddle. */
  private Optional<TableContents> unread(SheetHead head) throws IOException {
    boolean leftOut = recognizer.candidates(head).size() == 1;
    Optional<Row> headings = leftOut ? Optional.empty() : HeadingRow.of(head.rows());
    if (headings.isEmpty()) {
      return Optional.empty();
    }
    List<Row> rows = rows(head.index(), headings.get().number(), Integer.MAX_VALUE);
    List<Column> columns = new ArrayList<>();
    for (Cell cell : headings.get().cells()) {
      if (cell instanceof Cell.Text && !cell.shown().isBlank() && columns.size() < MOST_COLUMNS) {
        boolean told = own.meaning(head.name(), head.name(), cell.shown()).isPresent();
        columns.add(column(cell, "", told, rows));
      }
    }
    return Optional.of(
        new TableContents(
            head.name(),
            recognizer.kindByName(head.name()),
            recognizer.kindByName(head.name()).isPresent(),
            Set.of(),
            columns));
  }

  private static Column column(Cell heading, String meaning, boolean settled, List<Row> rows) {
    SortedMap<Integer, Cell> cells = new TreeMap<>();
    for (Row row : rows) {
      for (Cell cell : row.cells()) {
        boolean blank = cell instanceof Cell.Text text && text.text().isBlank();
        if (cell.column() == heading.column() && !blank) {
          cells.put(row.number(), cell);
        }
      }
    }
    return new Column(heading.column(), heading.shown().strip(), meaning, settled, cells);
  }

  private List<Row> rows(int sheet, int above, int below) throws IOException {
    List<Row> rows = new ArrayList<>();
    int[] cells = {0};
    Block narrow = new Block(0, 600);
    try {
      source.rows(
          sheet,
          row -> {
            if (row.number() > above && row.number() < below) {
              Row kept = narrow.of(row);
              rows.add(kept);
              cells[0] += kept.cells().size();
            }
            return row.number() < below && rows.size() < MOST_ROWS && cells[0] < MOST_CELLS;
          });
    } catch (DamagedSheet damaged) {
      // What is sound is enough to guess by; the damage is told where the sheet is read.
    }
    return rows;
  }
}
