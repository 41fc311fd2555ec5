package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.NumberWords;
import clenchbook.texts.Message;
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

  private static final Message AMOUNT = Message.of("cells.money.amount");
  private static final Message ZERO_OR_MORE = Message.of("cells.number.zeroOrMore");

  private NumberCell() {}

  /** What a cell should hold, and how it is said when it does not. */
  record Wanted(String heading, Severity severity, ProblemKind kind, Message expected) {
    static Wanted number(String heading, Message expected) {
      return new Wanted(heading, Severity.WARNING, ProblemKind.NUMBER_UNREADABLE, expected);
    }

    private Message unreadable(SoundCells row, Cell cell) {
      String shown = SoundCells.oneLine(cell);
      return switch (kind) {
        case MONEY_UNREADABLE -> Message.of("cells.money.unreadable", row.called(heading), shown);
        case MINUTES_UNREADABLE ->
            Message.of("cells.minutes.unreadable", row.called(heading), shown);
        default -> Message.of("cells.number.unreadable", row.called(heading), shown);
      };
    }
  }

  /** An amount of money; empty, and said, where it can't be read. */
  static Optional<BigDecimal> money(SoundCells row, String heading, Severity severity) {
    Wanted wanted = new Wanted(heading, severity, ProblemKind.MONEY_UNREADABLE, AMOUNT);
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
      String shown = SoundCells.oneLine(row.cell(wanted.heading()).orElseThrow());
      Message problem = Message.of("cells.money.decimalsOrThousands", shown);
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
      Message problem =
          Message.of("cells.money.foreign", row.called(heading), sign.get(), own, amount);
      Message expected = Message.of("cells.money.inOwn", own);
      row.warn(ProblemKind.CURRENCY_OTHER, heading, problem, expected);
    }
  }

  /** A number of at least nothing, in the column's own unit. */
  static Optional<BigDecimal> number(SoundCells row, String heading, Measure own) {
    return signed(row, heading, own)
        .filter(number -> notNegative(row, heading, number, ZERO_OR_MORE));
  }

  /** A number of any sign, in the column's own unit. */
  static Optional<BigDecimal> signed(SoundCells row, String heading, Measure own) {
    Wanted wanted = Wanted.number(heading, own.expected());
    Optional<BigDecimal> inWords = row.cell(heading).flatMap(cell -> inWords(cell, own));
    if (inWords.isPresent()) {
      String shown = SoundCells.oneLine(row.cell(heading).orElseThrow());
      Message problem = Message.of("cells.number.readAs", shown, inWords.get());
      Message expected = Message.of("cells.number.inDigits");
      row.warn(ProblemKind.NUMBER_IN_WORDS, heading, problem, expected);
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
      Message problem = Message.of("cells.number.is", row.called(heading), number.get());
      Message expected = Message.of("cells.number.whole");
      row.warn(ProblemKind.NUMBER_UNREADABLE, heading, problem, expected);
      return Optional.empty();
    }
    if (number.get().compareTo(BigDecimal.valueOf(MOST_PIECES)) > 0) {
      Message problem = Message.of("cells.number.is", row.called(heading), number.get());
      Message expected = Message.of("cells.number.ofOneDay");
      row.warn(ProblemKind.NUMBER_OUT_OF_RANGE, heading, problem, expected);
      return Optional.empty();
    }
    return Optional.of(number.get().intValueExact());
  }

  /** Whether a number is at least nothing; one below is said. */
  static boolean notNegative(SoundCells row, String heading, BigDecimal number, Message expected) {
    if (number.signum() >= 0) {
      return true;
    }
    Message problem = Message.of("cells.number.belowNothing", row.called(heading), number);
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
      Message problem = Message.of("cells.number.readAs", SoundCells.oneLine(cell), value);
      Message expected = Message.of("cells.number.decimalMark");
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
      Message problem =
          Message.of(
              "cells.number.otherUnit", row.called(wanted.heading()), SoundCells.oneLine(cell));
      row.warn(ProblemKind.UNIT_OTHER, wanted.heading(), problem, wanted.expected());
    } else {
      Message problem = wanted.unreadable(row, cell);
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
