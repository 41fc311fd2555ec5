package clenchbook.reading.cells;

import clenchbook.book.Counted;
import clenchbook.book.SheetKind;
import clenchbook.book.SourceRow;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.YesNo;
import clenchbook.texts.Message;
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
public final class RowCells extends SoundCells {
  private static final Message SOME_MONEY = Message.of("cells.money.some");

  public RowCells(
      SourceRow source,
      SheetKind kind,
      Map<String, Cell> cells,
      ReadingRules rules,
      TableSense sense,
      Consumer<Problem> problems) {
    super(source, kind, cells, rules, sense, problems);
  }

  // dates

  /** A day without which the row can't count. */
  public Optional<LocalDate> requiredDate(String heading) {
    return DateCell.required(this, heading);
  }

  /** A day that may be missing; one that can't be read counts as blank. */
  public Optional<LocalDate> date(String heading) {
    return DateCell.read(this, heading, Severity.WARNING);
  }

  // numbers

  /** Money that holds the row when it can't be read. */
  public Optional<BigDecimal> money(String heading) {
    return NumberCell.money(this, heading, Severity.HELD);
  }

  /** Money of a list: one that can't be read warns and counts as blank. */
  public Optional<BigDecimal> listMoney(String heading) {
    return signedListMoney(heading)
        .filter(amount -> NumberCell.notNegative(this, heading, amount, SOME_MONEY));
  }

  /** Money of a list that may be below nothing. */
  public Optional<BigDecimal> signedListMoney(String heading) {
    return NumberCell.money(this, heading, Severity.WARNING);
  }

  /** A number of pieces, at least nothing. */
  public Optional<BigDecimal> number(String heading) {
    return measure(heading, Measure.PIECE);
  }

  /** A number of at least nothing in the column's own unit, whichever was typed. */
  public Optional<BigDecimal> measure(String heading, Measure own) {
    return NumberCell.number(this, heading, own);
  }

  /** A number of any sign in the column's own unit, whichever was typed. */
  public Optional<BigDecimal> signedMeasure(String heading, Measure own) {
    return NumberCell.signed(this, heading, own);
  }

  /** Whether what was typed is a number of this unit, or of one that turns into it. */
  public boolean isIn(String heading, Measure own) {
    return cell(heading)
        .filter(Cell.Text.class::isInstance)
        .filter(text -> rules().measures().isIn(text.shown(), own))
        .isPresent();
  }

  /** A distance in the book's unit, whichever its heading names. */
  public Optional<BigDecimal> distance(String heading) {
    Measure own = rules().distanceUnder(heading);
    Measure books = rules().distance();
    if (own == books || isIn(heading, own)) {
      return measure(heading, books);
    }
    return measure(heading, own).flatMap(number -> books.convert(number, own.word()));
  }

  /** A share in per cent, 0 to 100: {@code 30}, {@code 30%} or 0.3 shown as 30%. */
  public Optional<BigDecimal> percent(String heading) {
    return PercentCell.read(this, heading);
  }

  /** A whole number of pieces, at least nothing. */
  public Optional<Integer> whole(String heading) {
    return whole(heading, Measure.PIECE);
  }

  /** A whole number of at least nothing in the column's own unit. */
  public Optional<Integer> whole(String heading, Measure own) {
    return NumberCell.whole(this, heading, own);
  }

  /** Minutes: a number, a time, or a text such as 0:45. */
  public Optional<BigDecimal> minutes(String heading) {
    return MinutesCell.read(this, heading);
  }

  /** Whether a cell of money says in words that all was paid, or nothing. */
  public Optional<Boolean> paidInWords(String heading) {
    return cell(heading).flatMap(YesNo::paid);
  }

  /** Nothing, where a cell of money says in words that the work is free; that is said. */
  public Optional<BigDecimal> freeInWords(String heading) {
    Optional<Cell> free = cell(heading).filter(YesNo::isFree);
    free.ifPresent(
        cell ->
            warn(
                ProblemKind.NUMBER_IN_WORDS,
                heading,
                Message.of("cells.number.readAs", oneLine(cell), 0),
                Message.of("cells.number.zeroOrBlank")));
    return free.map(cell -> BigDecimal.ZERO);
  }

  // words

  /** A text of one line, trimmed; empty when blank or not sound. */
  public String text(String heading) {
    return WordCell.oneLine(this, heading, Severity.WARNING);
  }

  /** A name that many rows share. */
  public String name(String heading) {
    return rules().once(text(heading));
  }

  /** The name of who pays: one that can't be read leaves nobody to bill. */
  public String payer(String heading) {
    return rules().once(WordCell.oneLine(this, heading, Severity.HELD));
  }

  /** A text that may have several lines. */
  public String lines(String heading) {
    return WordCell.lines(this, heading);
  }

  /** One of few words. */
  public <T> Optional<T> choice(String heading, Map<String, T> words, Message expected) {
    return WordCell.choice(this, heading, words, expected);
  }

  /** Yes or no. */
  public Optional<Boolean> yesNo(String heading) {
    return WordCell.yesNo(this, heading);
  }

  // sizes and parts

  /** One size, recovered where a spreadsheet changed it. */
  public String size(String heading) {
    return WordCell.size(this, heading);
  }

  /** Sizes with their counts. */
  public List<Counted> sizes(String heading) {
    return rules().parts("size", size(heading), PartsText::sizes);
  }

  /** Shoes with their counts. */
  public List<Counted> shoes(String heading) {
    return rules().parts("shoe", text(heading), PartsText::shoes);
  }

  /** Extras with their counts. */
  public List<Counted> extras(String heading) {
    String written = WordCell.text(this, heading, Severity.WARNING);
    return rules().parts("extra", written, PartsText::extras);
  }
}
