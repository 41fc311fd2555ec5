package clenchbook.reading.cells;

import clenchbook.book.SheetKind;
import clenchbook.book.SourceRow;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The cells of one row under the program's headings, as they stand; what is wrong with one is said
 * here, and may hold the row back.
 */
public abstract class SoundCells {
  private static final int LONGEST_SHOWN = 200;

  private final SourceRow source;
  private final SheetKind kind;
  private final Map<String, Cell> cells;
  private final ReadingRules rules;
  private final TableSense sense;
  private final Consumer<Problem> problems;
  private boolean held;

  SoundCells(
      SourceRow source,
      SheetKind kind,
      Map<String, Cell> cells,
      ReadingRules rules,
      TableSense sense,
      Consumer<Problem> problems) {
    this.source = source;
    this.kind = kind;
    this.cells = cells;
    this.rules = rules;
    this.sense = sense;
    this.problems = problems;
  }

  public SourceRow source() {
    return source;
  }

  ReadingRules rules() {
    return rules;
  }

  TableSense sense() {
    return sense;
  }

  /** Whether a problem has held the row back. */
  public boolean held() {
    return held;
  }

  /** Whether anything stands under the heading. */
  public boolean has(String heading) {
    return cells.containsKey(heading);
  }

  public Optional<Cell> cell(String heading) {
    return Optional.ofNullable(cells.get(heading));
  }

  public CellRef at(String heading) {
    return source.at(heading);
  }

  /** The heading as sentences name it: as the farrier's own book does. */
  public BookName called(String heading) {
    return BookName.of(kind.title(), heading);
  }

  /** Says what is wrong under a heading; a problem that holds keeps the row back. */
  public void say(
      Severity severity, ProblemKind kind, String heading, Message problem, Message expected) {
    held |= severity == Severity.HELD;
    String value = cell(heading).map(Cell::shown).orElse("");
    problems.accept(new Problem(kind, severity, at(heading), problem, expected, brief(value)));
  }

  public void warn(ProblemKind kind, String heading, Message problem, Message expected) {
    say(Severity.WARNING, kind, heading, problem, expected);
  }

  public static String brief(String value) {
    return value.length() <= LONGEST_SHOWN ? value : value.substring(0, LONGEST_SHOWN) + "…";
  }

  /** What stands in a cell, on one line and not too long. */
  public static String oneLine(Cell cell) {
    return brief(cell.shown()).replaceAll("\\R", " ");
  }

  /** The cell, unless it is an error or a formula without a result: that is said, never blank. */
  Optional<Cell> sound(String heading, Severity severity, Message expected) {
    Optional<Cell> found = cell(heading);
    if (found.isEmpty()) {
      return found;
    }
    Cell cell = found.get();
    if (cell instanceof Cell.NoValue) {
      Message problem = Message.of("cells.formula", called(heading));
      say(severity, ProblemKind.FORMULA_WITHOUT_VALUE, heading, problem, expected);
      return Optional.empty();
    }
    if (cell instanceof Cell.Fault || isErrorText(cell)) {
      Message problem = Message.of("cells.error", called(heading), cell.shown().strip());
      say(severity, ProblemKind.ERROR_CELL, heading, problem, expected);
      return Optional.empty();
    }
    return found;
  }

  /** Errors that a text file or another program keeps as their words. */
  private static boolean isErrorText(Cell cell) {
    return cell instanceof Cell.Text text
        && text.text().length() < 12
        && (text.text().indexOf('#') >= 0 || text.text().indexOf("Err") >= 0)
        && text.text()
            .strip()
            .matches("#(REF|N/A|VALUE|DIV/0|NAME|NUM|NULL|SPILL|CALC)[!?]?|Err:\\d{3}");
  }
}
