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
import clenchbook.reading.rows.ColumnContents.Holds;
import clenchbook.reading.rows.SheetRows;
import clenchbook.reading.words.LeftOut;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
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
import java.util.stream.Stream;

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
              : read(table, heading.heading());
      found.put(
          column,
          column(layout, heading, hidden ? note.before(Message.of("sheets.column.hidden")) : note));
    }
    unread.forEach(
        (column, contents) -> {
          Cell blank = new Cell.Text(column, false, "", false);
          HeadingCell heading = new HeadingCell(blank, "", How.NOT_READ, false);
          Note note = unread(layout, heading, Optional.of(contents));
          found.put(
              column, column(layout, heading, note.behind(Message.of("sheets.column.noHeading"))));
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
                        Message.NONE,
                        false,
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
        note.settlesOrder(),
        note.holdsMoney());
  }

  private static Note read(SheetRows table, String heading) {
    boolean carried = table.layout().headings().carried().contains(heading);
    Message order = table.sense().why(heading);
    Note note = new Note(order, !order.isEmpty(), false);
    return carried ? note.behind(Message.of("sheets.column.carried")) : note;
  }

  /**
   * What else is to be known of a column.
   *
   * @param words in words; may be empty
   * @param settlesOrder whether its own days settle the order of day and month
   * @param holdsMoney whether money or minutes stand in it although it is not read
   */
  private record Note(Message words, boolean settlesOrder, boolean holdsMoney) {
    static final Note NONE = of(Message.NONE);

    static Note of(Message words) {
      return new Note(words, false, false);
    }

    Note before(Message more) {
      return new Note(join(words, more), settlesOrder, holdsMoney);
    }

    Note behind(Message more) {
      return new Note(join(more, words), settlesOrder, holdsMoney);
    }

    private static Message join(Message one, Message other) {
      return Message.joined("; ", Stream.of(one, other).filter(words -> !words.isEmpty()).toList());
    }
  }

  /** Why a column is not read; one that money or minutes may hang on warns. */
  private Note unread(SheetLayout layout, HeadingCell heading, Optional<ColumnContents> contents) {
    if (heading.told()) {
      return Note.of(Message.of("sheets.column.leftOut"));
    }
    Optional<Headings.Twice> twice =
        layout.headings().twice().stream()
            .filter(each -> each.later().column() == heading.cell().column())
            .findFirst();
    if (twice.isPresent()) {
      BookName means = BookName.of(layout.kind().title(), twice.get().heading());
      String left = CellRef.letters(twice.get().left().column());
      return Note.of(Message.of("sheets.column.twice", means, left));
    }
    Optional<Holds> holds = contents.flatMap(ColumnContents::moneyOrMinutes);
    boolean harmless =
        isHarmless(layout, heading, contents.map(ColumnContents::marked).orElse(false));
    if (holds.isEmpty() || harmless || layout.kind() != SheetKind.VISITS) {
      return Note.NONE;
    }
    if (!said.contains(at(layout, heading))) {
      warn(layout, heading, holds.get());
    }
    return new Note(holds(holds.get()), false, true);
  }

  private static Message holds(Holds holds) {
    return switch (holds) {
      case MONEY -> Message.of("sheets.column.holdsMoney");
      case MINUTES -> Message.of("sheets.column.holdsMinutes");
      case NUMBERS -> Message.of("sheets.column.holdsNumbers");
    };
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

  private void warn(SheetLayout layout, HeadingCell heading, Holds holds) {
    String shown = SoundCells.oneLine(heading.cell());
    problems.accept(
        Problem.warning(
            ProblemKind.COLUMN_NOT_READ,
            at(layout, heading),
            shown.isEmpty() ? unnamedNotRead(holds) : notRead(holds, shown),
            Message.of("sheets.column.meaning"),
            shown));
  }

  private static Message notRead(Holds holds, String shown) {
    return switch (holds) {
      case MONEY -> Message.of("sheets.column.moneyNotRead", shown);
      case MINUTES -> Message.of("sheets.column.minutesNotRead", shown);
      case NUMBERS -> Message.of("sheets.column.numbersNotRead", shown);
    };
  }

  private static Message unnamedNotRead(Holds holds) {
    return switch (holds) {
      case MONEY -> Message.of("sheets.column.unnamedMoneyNotRead");
      case MINUTES -> Message.of("sheets.column.unnamedMinutesNotRead");
      case NUMBERS -> Message.of("sheets.column.unnamedNumbersNotRead");
    };
  }

  /** Adds a sheet that is not read, with the words that look most like its headings. */
  void addUnread(SheetHead head) {
    Optional<Row> headings =
        head.rows().stream().filter(UnderstoodBook::looksLikeHeadings).findFirst();
    if (headings.isEmpty()) {
      columns.add(unread(head, "", ""));
      return;
    }
    for (Cell cell : headings.get().cells()) {
      String shown = SoundCells.brief(cell.shown());
      columns.add(unread(head, CellRef.letters(cell.column()), shown));
    }
  }

  private static UnderstoodColumn unread(SheetHead head, String letters, String shown) {
    return new UnderstoodColumn(
        head.name(), "", letters, shown, "", How.NOT_READ, Message.NONE, false, false);
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
