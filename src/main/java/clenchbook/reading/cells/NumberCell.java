package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.NumberWords;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** A number in a cell, with the unit that may stand behind it. */
final class NumberCell {
  private static final BigDecimal MOST = new BigDecimal("1000000000000");
  private static final int MOST_PIECES = 1_000_000;

  /** Costs of single pieces, which are known to more than the minor unit. */
  private static final Set<String> IN_THOUSANDTHS = Set.of("Unit cost", "Pack cost");

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
    Optional<BigDecimal> amount = read(row, wanted, row.rules().money()::read);
    amount.ifPresent(read -> sayForeign(row, heading, read));
    return amount.filter(read -> isPlain(row, wanted));
  }

  /** {@code 1,234} in a book of decimal commas may be one or a thousand: said, and no amount. */
  private static boolean isPlain(SoundCells row, Wanted wanted) {
    boolean plain =
        IN_THOUSANDTHS.contains(wanted.heading())
            || !(row.cell(wanted.heading()).orElseThrow() instanceof Cell.Text text)
            || !row.rules().money().isOneOrThousand(text.text());
    if (!plain) {
      String problem =
          SoundCells.quoted(row.cell(wanted.heading()).orElseThrow())
              + " may have decimals or thousands";
      row.say(wanted.severity(), wanted.kind(), wanted.heading(), problem, wanted.expected());
    }
    return plain;
  }

  /** An amount under another currency's sign counts as the book's, and is said. */
  private static void sayForeign(SoundCells row, String heading, BigDecimal amount) {
    Cell cell = row.cell(heading).orElseThrow();
    Optional<String> sign =
        cell instanceof Cell.Text text
            ? row.rules().money().foreign(text.text())
            : cell instanceof Cell.Number number
                ? row.rules().foreign(number.format())
                : Optional.empty();
    if (sign.isPresent()) {
      String own = row.rules().money().currency().orElse("");
      String problem =
          heading
              + " bears "
              + sign.get()
              + ", but the book is in "
              + own
              + "; read as "
              + amount.toPlainString()
              + " "
              + own;
      row.warn(ProblemKind.CURRENCY_OTHER, heading, problem, "an amount in " + own);
    }
  }

  /** A number of at least nothing, in the column's own unit. */
  static Optional<BigDecimal> number(SoundCells row, String heading, Measure own) {
    return signed(row, heading, own)
        .filter(number -> notNegative(row, heading, number, "a number of 0 or more"));
  }

  /** A number of any sign, in the column's own unit. */
  static Optional<BigDecimal> signed(SoundCells row, String heading, Measure own) {
    boolean counted = own == Measure.PIECE;
    Wanted wanted = Wanted.number(heading, counted ? "a number" : "a number of " + own.word());
    Optional<BigDecimal> inWords = row.cell(heading).flatMap(cell -> inWords(cell, own));
    if (inWords.isPresent()) {
      String read = inWords.get().toPlainString();
      String problem = SoundCells.quoted(row.cell(heading).orElseThrow()) + " is read as " + read;
      row.warn(ProblemKind.NUMBER_IN_WORDS, heading, problem, "the number in digits");
      return inWords;
    }
    Optional<BigDecimal> read = read(row, wanted, text -> row.rules().measures().read(text, own));
    return read.map(
        number ->
            shown(row, heading, own).flatMap(unit -> own.convert(number, unit)).orElse(number));
  }

  /** A number as a word, alone or before a unit. */
  private static Optional<BigDecimal> inWords(Cell cell, Measure own) {
    if (!(cell instanceof Cell.Text text)) {
      return Optional.empty();
    }
    String bare = text.text().strip();
    int space = bare.indexOf(' ');
    Optional<BigDecimal> alone = NumberWords.find(bare).map(BigDecimal::valueOf);
    return alone.or(
        () ->
            NumberWords.find(bare.substring(0, Math.max(0, space)))
                .flatMap(word -> own.convert(BigDecimal.valueOf(word), bare.substring(space))));
  }

  /** The unit that a number's format shows behind it, where the column could have it. */
  private static Optional<String> shown(SoundCells row, String heading, Measure own) {
    return row.cell(heading)
        .filter(Cell.Number.class::isInstance)
        .flatMap(number -> row.rules().unit(((Cell.Number) number).format()))
        .filter(own::knows);
  }

  /** A whole number of at least nothing. */
  static Optional<Integer> whole(SoundCells row, String heading, Measure own) {
    Optional<BigDecimal> number = number(row, heading, own);
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
      sayUnreadable(row, wanted, cell);
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

  private static void sayUnreadable(SoundCells row, Wanted wanted, Cell cell) {
    boolean otherUnit =
        wanted.kind() == ProblemKind.NUMBER_UNREADABLE
            && cell instanceof Cell.Text text
            && row.rules().measures().isWithUnit(text.text());
    if (otherUnit) {
      String problem =
          wanted.heading() + " " + SoundCells.quoted(cell) + " has a unit that can't be converted";
      row.warn(ProblemKind.UNIT_OTHER, wanted.heading(), problem, wanted.expected());
    } else {
      String problem = wanted.unreadable(cell);
      row.say(wanted.severity(), wanted.kind(), wanted.heading(), problem, wanted.expected());
    }
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
