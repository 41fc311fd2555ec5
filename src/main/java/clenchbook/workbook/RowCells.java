package clenchbook.workbook;

import clenchbook.book.Counted;
import clenchbook.book.SourceRow;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.workbook.table.Cell;
import clenchbook.workbook.table.CellFormat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The cells of one row under the program's headings. Each question answers with a value or with
 * nothing; where a cell holds something that is no answer, a problem says so.
 */
final class RowCells {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal MOST = new BigDecimal("1000000000000");
  private static final BigDecimal MOST_MINUTES = new BigDecimal(1_000_000);
  private static final int MOST_PIECES = 1_000_000;
  private static final int LONGEST_SHOWN = 200;

  private final SourceRow source;
  private final Map<String, Cell> cells;
  private final ReadingRules rules;
  private final Consumer<Problem> problems;
  private boolean held;

  RowCells(
      SourceRow source, Map<String, Cell> cells, ReadingRules rules, Consumer<Problem> problems) {
    this.source = source;
    this.cells = cells;
    this.rules = rules;
    this.problems = problems;
  }

  SourceRow source() {
    return source;
  }

  ReadingRules rules() {
    return rules;
  }

  /** Whether a problem has held the row back. */
  boolean held() {
    return held;
  }

  /** Whether anything stands under the heading. */
  boolean has(String heading) {
    return cells.containsKey(heading);
  }

  Optional<Cell> cell(String heading) {
    return Optional.ofNullable(cells.get(heading));
  }

  CellRef at(String heading) {
    return source.at(heading);
  }

  /** Says what is wrong under a heading; a problem that holds keeps the row back. */
  void say(Severity severity, ProblemKind kind, String heading, String problem, String expected) {
    held |= severity == Severity.HELD;
    String value = cell(heading).map(Cell::shown).orElse("");
    problems.accept(new Problem(kind, severity, at(heading), problem, expected, brief(value)));
  }

  void warn(ProblemKind kind, String heading, String problem, String expected) {
    say(Severity.WARNING, kind, heading, problem, expected);
  }

  static String brief(String value) {
    return value.length() <= LONGEST_SHOWN ? value : value.substring(0, LONGEST_SHOWN) + "…";
  }

  private static String quoted(Cell cell) {
    return "'" + brief(cell.shown()).replaceAll("\\R", " ") + "'";
  }

  /** The cell, unless it is an error or a formula without a result: that is said, never blank. */
  private Optional<Cell> sound(String heading, Severity severity, String expected) {
    Optional<Cell> found = cell(heading);
    if (found.isEmpty()) {
      return found;
    }
    Cell cell = found.get();
    if (cell instanceof Cell.NoValue) {
      String problem = heading + " is a formula without a stored result";
      say(severity, ProblemKind.FORMULA_WITHOUT_VALUE, heading, problem, expected);
      return Optional.empty();
    }
    if (cell instanceof Cell.Fault || isErrorText(cell)) {
      String problem = heading + " holds the error " + cell.shown().strip();
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

  // dates

  /** A day without which the row can't count. */
  Optional<LocalDate> requiredDate(String heading) {
    if (!has(heading)) {
      String expected = "a day such as 2026-03-14";
      say(Severity.HELD, ProblemKind.DATE_MISSING, heading, heading + " is missing", expected);
      return Optional.empty();
    }
    return date(heading, Severity.HELD);
  }

  /** A day that may be missing; one that can't be read counts as blank. */
  Optional<LocalDate> date(String heading) {
    return date(heading, Severity.WARNING);
  }

  private Optional<LocalDate> date(String heading, Severity severity) {
    String expected = "a day such as 2026-03-14";
    Optional<Cell> found = sound(heading, severity, expected);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Cell cell = found.get();
    if (cell instanceof Cell.Moment moment && DateText.plausible(moment.at().toLocalDate())) {
      return Optional.of(moment.at().toLocalDate());
    }
    if (cell instanceof Cell.Number number) {
      return dateOfNumber(heading, severity, number);
    }
    DateText.Reading reading =
        cell instanceof Cell.Text text
            ? DateText.read(text.text(), rules.dateOrder())
            : DateText.Reading.NONE;
    return dateOfText(heading, severity, cell, reading);
  }

  private Optional<LocalDate> dateOfText(
      String heading, Severity severity, Cell cell, DateText.Reading reading) {
    if (reading.days().isEmpty()) {
      String problem = quoted(cell) + " is not a date";
      say(severity, ProblemKind.DATE_UNREADABLE, heading, problem, "a day such as 2026-03-14");
      return Optional.empty();
    }
    if (reading.days().size() > 1) {
      String problem =
          quoted(cell) + " may mean " + reading.days().get(0) + " or " + reading.days().get(1);
      String expected = "a true date, or the setting Date order (dmy or mdy)";
      say(severity, ProblemKind.DATE_AMBIGUOUS, heading, problem, expected);
      return Optional.empty();
    }
    LocalDate day = reading.days().get(0);
    if (reading.otherOrder()) {
      String problem = quoted(cell) + " is not in the order of the setting; read as " + day;
      warn(ProblemKind.DATE_OTHER_ORDER, heading, problem, "the order that Date order sets");
    }
    return Optional.of(day);
  }

  /** A day number whose format is lost, or a day written as eight digits. */
  private Optional<LocalDate> dateOfNumber(String heading, Severity severity, Cell.Number number) {
    Optional<BigDecimal> value = number.decimal();
    if (value.isPresent() && DayNumber.plausible(value.get())) {
      LocalDate day = DayNumber.day(value.get(), rules.from1904());
      String problem = quoted(number) + " is a bare number; read as day " + day;
      warn(ProblemKind.DATE_WITHOUT_FORMAT, heading, problem, "a cell formatted as a date");
      return Optional.of(day);
    }
    return dateOfText(heading, severity, number, DateText.read(number.shown(), Optional.empty()));
  }

  // numbers

  /** Money that holds the row when it can't be read. */
  Optional<BigDecimal> money(String heading) {
    return money(heading, Severity.HELD);
  }

  /** Money of a list: one that can't be read warns and counts as blank. */
  Optional<BigDecimal> listMoney(String heading) {
    return money(heading, Severity.WARNING)
        .filter(amount -> notNegative(heading, amount, "an amount of money"));
  }

  /** Money of a list that may be below nothing. */
  Optional<BigDecimal> signedListMoney(String heading) {
    return money(heading, Severity.WARNING);
  }

  private Optional<BigDecimal> money(String heading, Severity severity) {
    String expected = "an amount of money such as 85.00";
    return decimal(heading, severity, ProblemKind.MONEY_UNREADABLE, expected, rules.money()::read);
  }

  /** A number of at least nothing. */
  Optional<BigDecimal> number(String heading) {
    return signedNumber(heading)
        .filter(number -> notNegative(heading, number, "a number of 0 or more"));
  }

  Optional<BigDecimal> signedNumber(String heading) {
    return decimal(
        heading,
        Severity.WARNING,
        ProblemKind.NUMBER_UNREADABLE,
        "a number",
        text -> rules.numbers().read(withoutUnit(text)));
  }

  /** A unit after a number says nothing that the heading does not. */
  private static String withoutUnit(String text) {
    return text.strip()
        .replaceFirst(
            "(?i)\\s*(weeks?|wks?|days?|pcs?|pieces?|shoes?|nails?|mm|deg|°|dba?|m/s2|m/s²|s|sec)\\.?$",
            "");
  }

  /** A distance; its unit may stand behind it. */
  Optional<BigDecimal> distance(String heading) {
    return decimal(
            heading,
            Severity.WARNING,
            ProblemKind.NUMBER_UNREADABLE,
            "a distance as a number",
            text ->
                rules.numbers().read(text.strip().replaceFirst("(?i)\\s*(km|mi|miles?)\\.?$", "")))
        .filter(number -> notNegative(heading, number, "a distance of 0 or more"));
  }

  /** A length that may be a shop fraction such as 13 1/2. */
  Optional<BigDecimal> length(String heading) {
    return decimal(
            heading,
            Severity.WARNING,
            ProblemKind.NUMBER_UNREADABLE,
            "a length as a number",
            this::shopLength)
        .filter(number -> notNegative(heading, number, "a length of 0 or more"));
  }

  private Optional<NumberText.Reading> shopLength(String text) {
    String bare =
        text.strip().replaceFirst("(?i)\\s*(mm|in|inch|inches|ft|feet|\"|″|”|'|′)\\.?$", "");
    return rules
        .numbers()
        .read(bare)
        .or(
            () ->
                clenchbook.measure.Fraction.parse(bare)
                    .map(value -> new NumberText.Reading(value, false)));
  }

  /** A share in per cent, 0 to 100: {@code 30}, {@code 30%} or 0.3 shown as 30%. */
  Optional<BigDecimal> percent(String heading) {
    Optional<BigDecimal> read =
        decimal(
            heading,
            Severity.WARNING,
            ProblemKind.NUMBER_UNREADABLE,
            "a percentage such as 30",
            text -> rules.numbers().read(text.strip().replaceFirst("\\s*%$", "")));
    boolean asPercent =
        cell(heading)
            .filter(cell -> cell instanceof Cell.Number number && isPercent(number))
            .isPresent();
    Optional<BigDecimal> percent = asPercent ? read.map(value -> scaled(value)) : read;
    return percent.filter(value -> withinHundred(heading, value));
  }

  private static boolean isPercent(Cell.Number number) {
    return number.format().kind() == CellFormat.Kind.PERCENT;
  }

  private static BigDecimal scaled(BigDecimal share) {
    BigDecimal percent = share.multiply(HUNDRED).stripTrailingZeros();
    return percent.scale() < 0 ? percent.setScale(0) : percent;
  }

  private boolean withinHundred(String heading, BigDecimal percent) {
    if (percent.signum() >= 0 && percent.compareTo(HUNDRED) <= 0) {
      return true;
    }
    String problem = heading + " is " + percent.toPlainString();
    warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, "a percentage from 0 to 100");
    return false;
  }

  /** A whole number of at least nothing. */
  Optional<Integer> whole(String heading) {
    Optional<BigDecimal> number = number(heading);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    if (number.get().stripTrailingZeros().scale() > 0) {
      String problem = heading + " is " + number.get().toPlainString();
      warn(ProblemKind.NUMBER_UNREADABLE, heading, problem, "a whole number");
      return Optional.empty();
    }
    if (number.get().compareTo(BigDecimal.valueOf(MOST_PIECES)) > 0) {
      String problem = heading + " is " + number.get().toPlainString();
      warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, "a number that a day's work holds");
      return Optional.empty();
    }
    return Optional.of(number.get().intValueExact());
  }

  /** Minutes: a number, a time, or a text such as 0:45. */
  Optional<BigDecimal> minutes(String heading) {
    String expected = "minutes such as 45 or 0:45";
    Optional<Cell> found = sound(heading, Severity.WARNING, expected);
    Optional<BigDecimal> read =
        found.isPresent() && found.get() instanceof Cell.Span span
            ? Optional.of(MinutesText.ofSeconds(span.length().toSeconds()))
            : found.isEmpty()
                ? Optional.empty()
                : decimal(
                    heading,
                    Severity.WARNING,
                    ProblemKind.MINUTES_UNREADABLE,
                    expected,
                    rules.minutes()::read);
    return read.filter(value -> notNegative(heading, value, expected))
        .filter(value -> noMoreMinutes(heading, value));
  }

  private boolean noMoreMinutes(String heading, BigDecimal minutes) {
    if (minutes.compareTo(MOST_MINUTES) <= 0) {
      return true;
    }
    String problem = heading + " is " + minutes.toPlainString();
    warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, "minutes such as 45 or 0:45");
    return false;
  }

  private boolean notNegative(String heading, BigDecimal number, String expected) {
    if (number.signum() >= 0) {
      return true;
    }
    String problem = heading + " is below nothing: " + number.toPlainString();
    warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, expected);
    return false;
  }

  private Optional<BigDecimal> decimal(
      String heading,
      Severity severity,
      ProblemKind kind,
      String expected,
      Function<String, Optional<NumberText.Reading>> ofText) {
    Optional<Cell> found = sound(heading, severity, expected);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Optional<NumberText.Reading> reading = Optional.empty();
    if (found.get() instanceof Cell.Number number) {
      reading = number.decimal().map(value -> new NumberText.Reading(value, false));
    } else if (found.get() instanceof Cell.Text text) {
      reading = ofText.apply(text.text());
    }
    Optional<BigDecimal> value =
        reading.map(NumberText.Reading::value).filter(read -> read.abs().compareTo(MOST) < 0);
    if (value.isEmpty()) {
      say(severity, kind, heading, unreadable(heading, found.get(), kind), expected);
    } else if (reading.get().otherMark()) {
      String problem = quoted(found.get()) + " is read as " + value.get().toPlainString();
      warn(
          ProblemKind.NUMBER_OTHER_MARK,
          heading,
          problem,
          "the decimal mark of the book's country");
    }
    return value;
  }

  private static String unreadable(String heading, Cell cell, ProblemKind kind) {
    String what =
        kind == ProblemKind.MONEY_UNREADABLE
            ? "no amount of money that can be read"
            : kind == ProblemKind.MINUTES_UNREADABLE ? "no length of time" : "no number";
    return heading + " " + quoted(cell) + " is " + what;
  }

  // words

  /** A text of one line, trimmed; empty when blank or not sound. */
  String text(String heading) {
    return oneLine(text(heading, Severity.WARNING));
  }

  /** A name that many rows share. */
  String name(String heading) {
    return rules.once(text(heading));
  }

  /** The name of who pays: one that can't be read leaves nobody to bill. */
  String payer(String heading) {
    return rules.once(oneLine(text(heading, Severity.HELD)));
  }

  /** A text that may have several lines. */
  String lines(String heading) {
    return linesOf(text(heading, Severity.WARNING));
  }

  private String text(String heading, Severity severity) {
    Optional<Cell> found = sound(heading, severity, "a text");
    if (found.isEmpty()) {
      return "";
    }
    if (found.get() instanceof Cell.Text text && text.cut()) {
      String problem = heading + " is longer than 32,767 characters and was cut";
      warn(ProblemKind.TEXT_CUT, heading, problem, "a text that a cell can hold");
    }
    return trimmed(found.get().shown());
  }

  private static String oneLine(String text) {
    return hasBreak(text) ? text.replaceAll("\\s*\\R\\s*", " ") : text;
  }

  private static String linesOf(String text) {
    return hasBreak(text) ? text.replaceAll("\\R", "\n") : text;
  }

  /** Most texts have one line, and need no search for breaks. */
  private static boolean hasBreak(String text) {
    return text.chars().anyMatch(c -> c < ' ' || c == 0x85 || c == 0x2028 || c == 0x2029);
  }

  static String trimmed(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isSpace(text.charAt(from))) {
      from++;
    }
    while (to > from && isSpace(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF' || c == 0;
  }

  /** One of few words. */
  <T> Optional<T> choice(String heading, Map<String, T> words, String expected) {
    String written = text(heading);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> found = Optional.ofNullable(words.get(Wording.bare(written)));
    if (found.isEmpty()) {
      String problem = heading + " '" + brief(written) + "' is not known";
      warn(ProblemKind.CHOICE_UNKNOWN, heading, problem, expected);
    }
    return found;
  }

  /** Yes or no. */
  Optional<Boolean> yesNo(String heading) {
    Optional<Cell> found = sound(heading, Severity.WARNING, "yes or no");
    Optional<Boolean> answer = found.flatMap(YesNo::read);
    if (found.isPresent() && answer.isEmpty()) {
      String problem = heading + " " + quoted(found.get()) + " is neither yes nor no";
      warn(ProblemKind.YES_NO_UNREADABLE, heading, problem, "yes or no");
    }
    return answer;
  }

  // sizes and parts

  /** One size, recovered where a spreadsheet changed it. */
  String size(String heading) {
    Optional<Cell> found = sound(heading, Severity.WARNING, "a size such as 00 or 5/16");
    if (found.isEmpty()) {
      return "";
    }
    SizeCell.Reading reading = rules.size(found.get());
    if (reading.changed()) {
      saySizeChanged(heading, found.get(), reading);
    }
    return rules.once(trimmed(reading.text()));
  }

  private void saySizeChanged(String heading, Cell cell, SizeCell.Reading reading) {
    String expected = "a cell formatted as text";
    if (reading.text().isEmpty()) {
      String problem = heading + " " + quoted(cell) + " is no size, and what it was is lost";
      warn(ProblemKind.SIZE_LOST, heading, problem, expected);
    } else {
      String problem =
          "the spreadsheet made " + quoted(cell) + " of the size; read as " + reading.text();
      warn(ProblemKind.SIZE_RECOVERED, heading, problem, expected);
    }
  }

  /** Sizes with their counts. */
  List<Counted> sizes(String heading) {
    return rules.parts("size", size(heading), PartsText::sizes);
  }

  /** Shoes with their counts. */
  List<Counted> shoes(String heading) {
    return rules.parts("shoe", text(heading), PartsText::shoes);
  }

  /** Extras with their counts. */
  List<Counted> extras(String heading) {
    return rules.parts("extra", text(heading, Severity.WARNING), PartsText::extras);
  }
}
