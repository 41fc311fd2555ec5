package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.NumberWords;
import clenchbook.values.Fraction;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** A number in a cell, with the unit that may stand behind it. */
final class NumberCell {
  private static final BigDecimal MOST = new BigDecimal("1000000000000");
  private static final int MOST_PIECES = 1_000_000;

  /** A unit after a number says nothing that the heading does not. */
  private static final Pattern COUNTED_UNIT =
      Pattern.compile(
          "(?i)\\s*(weeks?|wks?|days?|pcs?|pieces?|shoes?|nails?|mm|deg|°|dba?|m/s2|m/s²|s|sec)\\.?$");

  private static final Pattern DISTANCE_UNIT = Pattern.compile("(?i)\\s*(km|mi|miles?)\\.?$");
  private static final Pattern LENGTH_UNIT =
      Pattern.compile("(?i)\\s*(mm|in|inch|inches|ft|feet|\"|″|”|'|′)\\.?$");

  private NumberCell() {}

  /** What a cell should hold, and how it is said when it does not. */
  record Wanted(String heading, Severity severity, ProblemKind kind, String expected) {
    static Wanted number(String heading, String expected) {
      return new Wanted(heading, Severity.WARNING, ProblemKind.NUMBER_UNREADABLE, expected);
    }

    private String unreadable(Cell cell) {
      String what =
          kind == ProblemKind.MONEY_UNREADABLE
              ? "no amount of money that can be read"
              : kind == ProblemKind.MINUTES_UNREADABLE ? "no length of time" : "no number";
      return heading + " " + SoundCells.quoted(cell) + " is " + what;
    }
  }

  /** An amount of money; empty, and said, where it can't be read. */
  static Optional<BigDecimal> money(SoundCells row, String heading, Severity severity) {
    String expected = "an amount of money such as 85.00";
    Wanted wanted = new Wanted(heading, severity, ProblemKind.MONEY_UNREADABLE, expected);
    return read(row, wanted, row.rules().money()::read);
  }

  /** A number of at least nothing. */
  static Optional<BigDecimal> number(SoundCells row, String heading) {
    return signed(row, heading)
        .filter(number -> notNegative(row, heading, number, "a number of 0 or more"));
  }

  /** A number of any sign. */
  static Optional<BigDecimal> signed(SoundCells row, String heading) {
    Wanted wanted = Wanted.number(heading, "a number");
    Optional<Integer> word = row.cell(heading).flatMap(NumberCell::inWords);
    if (word.isPresent()) {
      String problem = SoundCells.quoted(row.cell(heading).get()) + " is read as " + word.get();
      row.warn(ProblemKind.NUMBER_IN_WORDS, heading, problem, "the number in digits");
      return word.map(BigDecimal::valueOf);
    }
    return read(row, wanted, text -> row.rules().numbers().read(without(COUNTED_UNIT, text)));
  }

  private static Optional<Integer> inWords(Cell cell) {
    return cell instanceof Cell.Text text
        ? NumberWords.find(without(COUNTED_UNIT, text.text()))
        : Optional.empty();
  }

  /** A distance; its unit may stand behind it. */
  static Optional<BigDecimal> distance(SoundCells row, String heading) {
    Wanted wanted = Wanted.number(heading, "a distance as a number");
    return read(row, wanted, text -> row.rules().numbers().read(without(DISTANCE_UNIT, text)))
        .filter(number -> notNegative(row, heading, number, "a distance of 0 or more"));
  }

  /** A length that may be a shop fraction such as 13 1/2. */
  static Optional<BigDecimal> length(SoundCells row, String heading) {
    Wanted wanted = Wanted.number(heading, "a length as a number");
    return read(row, wanted, text -> shopLength(row, without(LENGTH_UNIT, text)))
        .filter(number -> notNegative(row, heading, number, "a length of 0 or more"));
  }

  private static Optional<NumberText.Reading> shopLength(SoundCells row, String bare) {
    return row.rules().numbers().read(bare).or(() -> Fraction.parse(bare).map(NumberCell::plain));
  }

  private static String without(Pattern unit, String text) {
    return unit.matcher(text.strip()).replaceFirst("");
  }

  /** A whole number of at least nothing. */
  static Optional<Integer> whole(SoundCells row, String heading) {
    Optional<BigDecimal> number = number(row, heading);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    if (number.get().stripTrailingZeros().scale() > 0) {
      String problem = heading + " is " + number.get().toPlainString();
      row.warn(ProblemKind.NUMBER_UNREADABLE, heading, problem, "a whole number");
      return Optional.empty();
    }
    if (number.get().compareTo(BigDecimal.valueOf(MOST_PIECES)) > 0) {
      String problem = heading + " is " + number.get().toPlainString();
      String expected = "a number that a day's work holds";
      row.warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, expected);
      return Optional.empty();
    }
    return Optional.of(number.get().intValueExact());
  }

  /** Whether a number is at least nothing; one below is said. */
  static boolean notNegative(SoundCells row, String heading, BigDecimal number, String expected) {
    if (number.signum() >= 0) {
      return true;
    }
    String problem = heading + " is below nothing: " + number.toPlainString();
    row.warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, expected);
    return false;
  }

  /** The number of a cell, or of its text; empty, and said, where there is none. */
  static Optional<BigDecimal> read(
      SoundCells row, Wanted wanted, Function<String, Optional<NumberText.Reading>> ofText) {
    Optional<Cell> found = row.sound(wanted.heading(), wanted.severity(), wanted.expected());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Cell cell = found.get();
    Optional<NumberText.Reading> reading =
        reading(cell, ofText).filter(number -> number.value().abs().compareTo(MOST) < 0);
    if (reading.isEmpty()) {
      String problem = wanted.unreadable(cell);
      row.say(wanted.severity(), wanted.kind(), wanted.heading(), problem, wanted.expected());
      return Optional.empty();
    }
    BigDecimal value = reading.get().value();
    if (reading.get().otherMark()) {
      String problem = SoundCells.quoted(cell) + " is read as " + value.toPlainString();
      String expected = "the decimal mark of the book's country";
      row.warn(ProblemKind.NUMBER_OTHER_MARK, wanted.heading(), problem, expected);
    }
    return Optional.of(value);
  }

  private static Optional<NumberText.Reading> reading(
      Cell cell, Function<String, Optional<NumberText.Reading>> ofText) {
    if (cell instanceof Cell.Number number) {
      return number.decimal().map(NumberCell::plain);
    }
    return cell instanceof Cell.Text text ? ofText.apply(text.text()) : Optional.empty();
  }

  private static NumberText.Reading plain(BigDecimal value) {
    return new NumberText.Reading(value, false);
  }
}
