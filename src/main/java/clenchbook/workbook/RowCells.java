package clenchbook.workbook;

import clenchbook.book.Counted;
import clenchbook.book.SourceRow;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.workbook.table.Cell;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What may be asked of one row. Each question answers with a value or with nothing; where a cell
 * holds something that is no answer, a problem says so.
 */
final class RowCells extends SoundCells {
  RowCells(
      SourceRow source, Map<String, Cell> cells, ReadingRules rules, Consumer<Problem> problems) {
    super(source, cells, rules, problems);
  }

  // dates

  /** A day without which the row can't count. */
  Optional<LocalDate> requiredDate(String heading) {
    return DateCell.required(this, heading);
  }

  /** A day that may be missing; one that can't be read counts as blank. */
  Optional<LocalDate> date(String heading) {
    return DateCell.read(this, heading, Severity.WARNING);
  }

  // numbers

  /** Money that holds the row when it can't be read. */
  Optional<BigDecimal> money(String heading) {
    return NumberCell.money(this, heading, Severity.HELD);
  }

  /** Money of a list: one that can't be read warns and counts as blank. */
  Optional<BigDecimal> listMoney(String heading) {
    return signedListMoney(heading)
        .filter(amount -> NumberCell.notNegative(this, heading, amount, "an amount of money"));
  }

  /** Money of a list that may be below nothing. */
  Optional<BigDecimal> signedListMoney(String heading) {
    return NumberCell.money(this, heading, Severity.WARNING);
  }

  /** A number of at least nothing. */
  Optional<BigDecimal> number(String heading) {
    return NumberCell.number(this, heading);
  }

  /** A number of any sign. */
  Optional<BigDecimal> signedNumber(String heading) {
    return NumberCell.signed(this, heading);
  }

  /** A distance; its unit may stand behind it. */
  Optional<BigDecimal> distance(String heading) {
    return NumberCell.distance(this, heading);
  }

  /** A length that may be a shop fraction such as 13 1/2. */
  Optional<BigDecimal> length(String heading) {
    return NumberCell.length(this, heading);
  }

  /** A share in per cent, 0 to 100: {@code 30}, {@code 30%} or 0.3 shown as 30%. */
  Optional<BigDecimal> percent(String heading) {
    return PercentCell.read(this, heading);
  }

  /** A whole number of at least nothing. */
  Optional<Integer> whole(String heading) {
    return NumberCell.whole(this, heading);
  }

  /** Minutes: a number, a time, or a text such as 0:45. */
  Optional<BigDecimal> minutes(String heading) {
    return MinutesCell.read(this, heading);
  }

  // words

  /** A text of one line, trimmed; empty when blank or not sound. */
  String text(String heading) {
    return WordCell.oneLine(this, heading, Severity.WARNING);
  }

  /** A name that many rows share. */
  String name(String heading) {
    return rules().once(text(heading));
  }

  /** The name of who pays: one that can't be read leaves nobody to bill. */
  String payer(String heading) {
    return rules().once(WordCell.oneLine(this, heading, Severity.HELD));
  }

  /** A text that may have several lines. */
  String lines(String heading) {
    return WordCell.lines(this, heading);
  }

  /** One of few words. */
  <T> Optional<T> choice(String heading, Map<String, T> words, String expected) {
    return WordCell.choice(this, heading, words, expected);
  }

  /** Yes or no. */
  Optional<Boolean> yesNo(String heading) {
    return WordCell.yesNo(this, heading);
  }

  // sizes and parts

  /** One size, recovered where a spreadsheet changed it. */
  String size(String heading) {
    return WordCell.size(this, heading);
  }

  /** Sizes with their counts. */
  List<Counted> sizes(String heading) {
    return rules().parts("size", size(heading), PartsText::sizes);
  }

  /** Shoes with their counts. */
  List<Counted> shoes(String heading) {
    return rules().parts("shoe", text(heading), PartsText::shoes);
  }

  /** Extras with their counts. */
  List<Counted> extras(String heading) {
    String written = WordCell.text(this, heading, Severity.WARNING);
    return rules().parts("extra", written, PartsText::extras);
  }
}
