package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.Optional;

/** Minutes in a cell: a number, a time, or a text such as 0:45. */
final class MinutesCell {
  private static final BigDecimal MOST = new BigDecimal(1_000_000);
  private static final Message EXPECTED = Message.of("cells.minutes.some");

  private MinutesCell() {}

  /** The minutes; empty, and said, where they can't be read or can't be. */
  static Optional<BigDecimal> read(SoundCells row, String heading) {
    return plain(row, heading)
        .filter(minutes -> NumberCell.notNegative(row, heading, minutes, EXPECTED))
        .filter(minutes -> possible(row, heading, minutes));
  }

  private static Optional<BigDecimal> plain(SoundCells row, String heading) {
    Optional<Cell> cell = row.cell(heading);
    if (cell.isPresent() && cell.get() instanceof Cell.Span span) {
      return Optional.of(MinutesText.ofSeconds(span.length().toSeconds()));
    }
    ProblemKind kind = ProblemKind.MINUTES_UNREADABLE;
    var wanted = new NumberCell.Wanted(heading, Severity.WARNING, kind, EXPECTED);
    return NumberCell.read(row, wanted, row.rules().minutes()::read);
  }

  private static boolean possible(SoundCells row, String heading, BigDecimal minutes) {
    if (minutes.compareTo(MOST) <= 0) {
      return true;
    }
    Message problem = Message.of("cells.number.is", row.called(heading), minutes);
    row.warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, EXPECTED);
    return false;
  }
}
