package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** A share in per cent, 0 to 100: {@code 30}, {@code 30%} or 0.3 shown as 30%. */
final class PercentCell {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final Pattern SIGN = Pattern.compile("\\s*%$");

  private static final Message EXPECTED = Message.of("cells.percent.some");

  private PercentCell() {}

  /** The percentage; empty, and said, where it can't be read or lies outside 0 to 100. */
  static Optional<BigDecimal> read(SoundCells row, String heading) {
    NumberCell.Wanted wanted = NumberCell.Wanted.number(heading, EXPECTED);
    Optional<BigDecimal> read = NumberCell.read(row, wanted, text -> ofText(row, text));
    boolean asShare = row.cell(heading).filter(PercentCell::isShownAsPercent).isPresent();
    return (asShare ? read.map(PercentCell::ofShare) : read)
        .filter(percent -> withinHundred(row, heading, percent));
  }

  private static Optional<NumberText.Reading> ofText(SoundCells row, String text) {
    return row.rules().numbers().read(SIGN.matcher(text.strip()).replaceFirst(""));
  }

  private static boolean isShownAsPercent(Cell cell) {
    return cell instanceof Cell.Number number && number.format().kind() == CellFormat.Kind.PERCENT;
  }

  private static BigDecimal ofShare(BigDecimal share) {
    BigDecimal percent = share.multiply(HUNDRED).stripTrailingZeros();
    return percent.scale() < 0 ? percent.setScale(0) : percent;
  }

  private static boolean withinHundred(SoundCells row, String heading, BigDecimal percent) {
    if (percent.signum() >= 0 && percent.compareTo(HUNDRED) <= 0) {
      return true;
    }
    Message problem = Message.of("cells.number.is", row.called(heading), percent);
    Message expected = Message.of("cells.percent.toHundred");
    row.warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, expected);
    return false;
  }
}
