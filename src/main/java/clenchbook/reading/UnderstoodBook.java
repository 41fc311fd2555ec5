package clenchbook.reading;

import clenchbook.book.SheetKind;
import clenchbook.book.understood.How;
import clenchbook.book.understood.Understood;
import clenchbook.book.understood.UnderstoodColumn;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.recognise.HeadingCell;
import clenchbook.reading.recognise.Headings;
import clenchbook.reading.recognise.SheetHead;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.rows.ColumnContents;
import clenchbook.reading.rows.SheetRows;
import clenchbook.reading.words.LeftOut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Tells what was made of every sheet and column, and warns of columns of money or minutes beside
 * visits that nobody reads.
 */
final class UnderstoodBook {
  private static final int FEWEST_HEADINGS = 2;

  private final Consumer<Problem> problems;
  private final Set<CellRef> said;
  private final List<UnderstoodColumn> columns = new ArrayList<>();

  /**
   * Begins a book.
   *
   * @param problems takes the warnings
   * @param said cells of headings that a problem names already
   */
  UnderstoodBook(Consumer<Problem> problems, Set<CellRef> said) {
    this.problems = problems;
    this.said = Set.copyOf(said);
  }

  /** The cells of headings that problems name. */
  static Set<CellRef> named(List<Problem> problems) {
    return problems.stream()
        .filter(
            problem ->
                problem.kind() == ProblemKind.HEADING_TWICE
                    || problem.kind() == ProblemKind.HEADING_UNKNOWN)
        .map(Problem::at)
        .collect(Collectors.toCollection(HashSet::new));
  }

  /** Adds a sheet that was read. */
  void add(List<SheetRows> tables, boolean hidden) {
    tables.forEach(table -> columns.addAll(columns(table, hidden)));
  }

  private List<UnderstoodColumn> columns(SheetRows table, boolean hidden) {
    SheetLayout layout = table.layout();
    Map<Integer, ColumnContents> unread = new TreeMap<>(table.unread().contents());
    Map<Integer, UnderstoodColumn> found = new TreeMap<>();
    for (HeadingCell heading : layout.headings().cells()) {
      int column = heading.cell().column();
      ColumnContents contents = unread.remove(column);
      Note note =
          heading.heading().isEmpty()
              ? unread(layout, heading, Optional.ofNullable(contents))
              : Note.of(read(table, heading.heading()));
      found.put(column, column(layout, heading, hidden ? note.before("hidden sheet") : note));
    }
    unread.forEach(
        (column, contents) -> {
          Cell blank = new Cell.Text(column, false, "", false);
          HeadingCell heading = new HeadingCell(blank, "", How.NOT_READ, false);
          Note note = unread(layout, heading, Optional.of(contents));
          found.put(column, column(layout, heading, note.behind("no heading")));
        });
    List<UnderstoodColumn> all = new ArrayList<>(found.values());
    layout
        .headings()
        .named()
        .ifPresent(
            heading ->
                all.add(
                    new UnderstoodColumn(
                        layout.name(),
                        layout.kind().title(),
                        "",
                        "(sheet name)",
                        heading,
                        How.HEADINGS,
                        "",
                        false)));
    return all;
  }

  private static UnderstoodColumn column(SheetLayout layout, HeadingCell heading, Note note) {
    return new UnderstoodColumn(
        layout.name(),
        layout.kind().title(),
        CellRef.letters(heading.cell().column()),
        SoundCells.brief(heading.cell().shown()),
        heading.heading(),
        heading.how(),
        note.words(),
        note.holdsMoney());
  }

  private static String read(SheetRows table, String heading) {
    boolean carried = table.layout().headings().carried().contains(heading);
    return join(carried ? "carried down" : "", table.sense().why(heading));
  }

  /**
   * What else is to be known of a column.
   *
   * @param words in words; may be empty
   * @param holdsMoney whether money or minutes stand in it although it is not read
   */
  private record Note(String words, boolean holdsMoney) {
    static Note of(String words) {
      return new Note(words, false);
    }

    Note before(String more) {
      return new Note(join(words, more), holdsMoney);
    }

    Note behind(String more) {
      return new Note(join(more, words), holdsMoney);
    }
  }

  private static String join(String one, String other) {
    return one.isEmpty() || other.isEmpty() ? one + other : one + "; " + other;
  }

  /** Why a column is not read; one that money or minutes may hang on warns. */
  private Note unread(SheetLayout layout, HeadingCell heading, Optional<ColumnContents> contents) {
    if (heading.told()) {
      return Note.of("left out, as Headings says");
    }
    Optional<Headings.Twice> twice =
        layout.headings().twice().stream()
            .filter(each -> each.later().column() == heading.cell().column())
            .findFirst();
    if (twice.isPresent()) {
      return Note.of(
          "means "
              + twice.get().heading()
              + ", as "
              + CellRef.letters(twice.get().left().column())
              + " does, which counts");
    }
    Optional<String> holds = contents.flatMap(ColumnContents::moneyOrMinutes);
    boolean harmless =
        isHarmless(layout, heading, contents.map(ColumnContents::marked).orElse(false));
    if (holds.isEmpty() || harmless || layout.kind() != SheetKind.VISITS) {
      return Note.of("");
    }
    if (!said.contains(at(layout, heading))) {
      warn(layout, heading, holds.get());
    }
    return new Note("holds " + holds.get(), true);
  }

  private static boolean isHarmless(SheetLayout layout, HeadingCell heading, boolean marked) {
    String words = heading.cell().shown();
    boolean charged = layout.columns().containsKey("Charge");
    return (LeftOut.isHarmless(words) && !marked) || (LeftOut.isBalance(words) && charged);
  }

  private static CellRef at(SheetLayout layout, HeadingCell heading) {
    return new CellRef(
        layout.name(), layout.headingRow(), CellRef.letters(heading.cell().column()));
  }

  private void warn(SheetLayout layout, HeadingCell heading, String holds) {
    String shown = SoundCells.brief(heading.cell().shown()).replaceAll("\\R", " ");
    String column =
        shown.isEmpty() ? "this column without a heading" : "the column '" + shown + "'";
    problems.accept(
        Problem.warning(
            ProblemKind.COLUMN_NOT_READ,
            at(layout, heading),
            column + " holds " + holds + " and is not read",
            "a heading of the guide, or a row in Headings (also 'not read'); check --propose can"
                + " guess",
            shown));
  }

  /** Adds a sheet that is not read, with the words that look most like its headings. */
  void addUnread(SheetHead head) {
    Optional<Row> headings =
        head.rows().stream().filter(UnderstoodBook::looksLikeHeadings).findFirst();
    if (headings.isEmpty()) {
      columns.add(new UnderstoodColumn(head.name(), "", "", "", "", How.NOT_READ, "", false));
      return;
    }
    for (Cell cell : headings.get().cells()) {
      String letters = CellRef.letters(cell.column());
      String shown = SoundCells.brief(cell.shown());
      columns.add(
          new UnderstoodColumn(head.name(), "", letters, shown, "", How.NOT_READ, "", false));
    }
  }

  /** Columns that nobody reads stand first, then whole sheets, then what is read. */
  private static int rank(UnderstoodColumn column) {
    if (column.read()) {
      return 2;
    }
    return column.takenAs().isEmpty() ? 1 : 0;
  }

  private static boolean looksLikeHeadings(Row row) {
    return row.cells().stream().filter(cell -> cell instanceof Cell.Text).count()
        >= FEWEST_HEADINGS;
  }

  Understood understood(List<String> hidden, Optional<String> headingsFile) {
    List<UnderstoodColumn> sorted = new ArrayList<>(columns);
    sorted.sort(Comparator.comparingInt(UnderstoodBook::rank));
    return new Understood(sorted, hidden, headingsFile);
  }
}
