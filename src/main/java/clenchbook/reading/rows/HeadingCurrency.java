package clenchbook.reading.rows;

import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.recognise.HeadingCell;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.texts.Message;
import java.util.function.Consumer;

/** Warns of columns whose headings name another currency than the book's. */
final class HeadingCurrency {
  private HeadingCurrency() {}

  static void say(SheetLayout layout, ReadingRules rules, Consumer<Problem> problems) {
    for (HeadingCell heading : layout.headings().cells()) {
      if (!heading.heading().isEmpty()) {
        rules
            .foreignIn(heading.cell().shown())
            .ifPresent(sign -> problems.accept(problem(layout, rules, heading, sign)));
      }
    }
  }

  private static Problem problem(
      SheetLayout layout, ReadingRules rules, HeadingCell heading, String sign) {
    String letters = CellRef.letters(heading.cell().column());
    String shown = SoundCells.oneLine(heading.cell());
    String own = rules.currency();
    return Problem.warning(
        ProblemKind.CURRENCY_OTHER,
        new CellRef(layout.name(), layout.headingRow(), letters),
        Message.of("rows.currency.otherInHeading", shown, sign, own),
        Message.of("rows.currency.inOwn", own),
        shown);
  }
}
