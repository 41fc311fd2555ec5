package clenchbook.reports.month;

import clenchbook.book.Book;
import clenchbook.book.SheetControl;
import clenchbook.book.understood.Understood;
import clenchbook.book.understood.UnderstoodColumn;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.texts.Texts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What became of every row of the book, and all its problems. */
public final class BookFigures {
  private BookFigures() {}

  /**
   * All problems in the order of the book: by sheet, row and cell.
   *
   * @param book the book
   * @param problems the problems, in any order; equal ones count once
   * @return sorted
   */
  public static List<Problem> sorted(Book book, List<Problem> problems) {
    Map<String, Integer> places = new HashMap<>();
    book.sheets().forEach(sheet -> places.putIfAbsent(sheet, places.size()));
    Comparator<Problem> order =
        Comparator.comparingInt(
            (Problem problem) -> places.getOrDefault(problem.at().sheet(), Integer.MAX_VALUE));
    return problems.stream()
        .distinct()
        .sorted(
            order
                .thenComparing(problem -> problem.at().sheet())
                .thenComparingInt(problem -> problem.at().row())
                .thenComparingInt(problem -> problem.at().columnIndex())
                .thenComparing(Problem::kind)
                .thenComparing(Problem::problem))
        .toList();
  }

  /**
   * How many rows of each sheet were used, held back and ignored.
   *
   * @param book the book
   * @param problems all problems
   * @return rows = used + held + ignored for every sheet
   */
  public static FigureTable control(Book book, List<Problem> problems) {
    List<List<String>> rows = new ArrayList<>();
    for (SheetControl control : book.controls()) {
      int held = held(control.sheet(), problems);
      int used = control.rows() - held - control.ignored();
      if (used < 0) {
        throw new IllegalStateException(control + " with " + held + " held");
      }
      rows.add(
          List.of(
              control.sheet(),
              Figures.count(control.rows()),
              Figures.count(used),
              Figures.count(held),
              Figures.count(control.ignored())));
    }
    return new FigureTable("control", List.of("sheet", "rows", "used", "held", "ignored"), rows);
  }

  /**
   * The distinct rows that are held back in a sheet.
   *
   * @param sheet the sheet's own name
   * @param problems all problems
   * @return how many
   */
  public static int held(String sheet, List<Problem> problems) {
    return (int)
        problems.stream()
            .filter(problem -> problem.severity() == Severity.HELD)
            .map(Problem::at)
            .filter(at -> at.sheet().equals(sheet) && at.row() > 0)
            .mapToInt(CellRef::row)
            .distinct()
            .count();
  }

  /**
   * The table {@code understood}.
   *
   * @param understood what was made of each sheet and column
   * @param texts the farrier's language, for what else is to be known
   * @return one row for each column, and one for each sheet that is not read
   */
  public static FigureTable understood(Understood understood, Texts texts) {
    return FiguresOf.rows(understood.columns())
        .column("sheet", UnderstoodColumn::sheet)
        .column("taken_as", UnderstoodColumn::takenAs)
        .column("column", UnderstoodColumn::column)
        .column("heading", UnderstoodColumn::heading)
        .column("meaning", UnderstoodColumn::meaning)
        .column("how", column -> column.how().word())
        .column("note", column -> texts.say(column.note()))
        .named("understood");
  }

  /**
   * The table {@code problems}.
   *
   * @param problems sorted problems
   * @param texts the farrier's language, for what is wrong and what was expected
   * @return one row each
   */
  public static FigureTable problems(List<Problem> problems, Texts texts) {
    return FiguresOf.rows(problems)
        .column("sheet", problem -> problem.at().sheet())
        .column("cell", problem -> problem.at().cell())
        .column("row", problem -> problem.at().row() > 0 ? Figures.count(problem.at().row()) : "")
        .column("severity", problem -> problem.severity().word())
        .column("problem", problem -> texts.say(problem.problem()))
        .column("expected", problem -> texts.say(problem.expected()))
        .column("value", Problem::value)
        .column("kind", problem -> problem.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
        .named("problems");
  }
}
