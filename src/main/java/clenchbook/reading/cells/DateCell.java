package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** A day in a cell: a true date, a bare day number, or a text in one of many orders. */
final class DateCell {
  private static final Message EXPECTED = Message.of("cells.date.some");

  private DateCell() {}

  /** A day without which the row can't count. */
  static Optional<LocalDate> required(SoundCells row, String heading) {
    if (!row.has(heading)) {
      Message problem = Message.of("cells.missing", row.called(heading));
      row.say(Severity.HELD, ProblemKind.DATE_MISSING, heading, problem, EXPECTED);
      return Optional.empty();
    }
    return read(row, heading, Severity.HELD);
  }

  /** The day; empty, and said, where it can't be read. */
  static Optional<LocalDate> read(SoundCells row, String heading, Severity severity) {
    Optional<Cell> found = row.sound(heading, severity, EXPECTED);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Cell cell = found.get();
    if (cell instanceof Cell.Moment moment && DateText.plausible(moment.at().toLocalDate())) {
      return Optional.of(moment.at().toLocalDate());
    }
    if (cell instanceof Cell.Number number) {
      return ofNumber(row, heading, severity, number);
    }
    return cell instanceof Cell.Text text
        ? ofWords(row, heading, severity, text)
        : ofText(row, heading, severity, cell, DateText.Reading.NONE);
  }

  private static Optional<LocalDate> ofWords(
      SoundCells row, String heading, Severity severity, Cell.Text cell) {
    Optional<DateText.Order> given = row.rules().dateOrder();
    Optional<DateText.Order> order = given.or(() -> row.sense().order(heading));
    DateText.Reading reading = DateText.read(cell.text(), order);
    if (given.isEmpty()) {
      row.sense().witness(heading, cell.text(), reading);
    }
    Optional<LocalDate> ofMonth =
        reading.days().isEmpty() ? dayOfMonth(row, cell.text()) : Optional.empty();
    return ofMonth.isPresent() ? ofMonth : ofText(row, heading, severity, cell, reading);
  }

  /** A day of the month alone, where the sheet's name or a title gives month and year. */
  private static Optional<LocalDate> dayOfMonth(SoundCells row, String text) {
    Optional<YearMonth> month = row.sense().month();
    return month.isEmpty() ? Optional.empty() : DayOfMonth.in(month.get(), text);
  }

  private static Optional<LocalDate> ofText(
      SoundCells row, String heading, Severity severity, Cell cell, DateText.Reading reading) {
    if (reading.days().isEmpty()) {
      Message problem = Message.of("cells.date.none", SoundCells.oneLine(cell));
      row.say(severity, ProblemKind.DATE_UNREADABLE, heading, problem, EXPECTED);
      return Optional.empty();
    }
    if (reading.days().size() > 1) {
      Message problem =
          Message.of(
              "cells.date.ambiguous",
              SoundCells.oneLine(cell),
              reading.days().get(0),
              reading.days().get(1));
      Message expected = Message.of("cells.date.trueDate");
      row.say(severity, ProblemKind.DATE_AMBIGUOUS, heading, problem, expected);
      return Optional.empty();
    }
    LocalDate day = reading.days().get(0);
    if (reading.otherOrder()) {
      Message problem = Message.of("cells.date.otherOrder", SoundCells.oneLine(cell), day);
      row.warn(ProblemKind.DATE_OTHER_ORDER, heading, problem, Message.of("cells.date.inOrder"));
    }
    return Optional.of(day);
  }

  /** A day number whose format is lost, or a day written as eight digits. */
  private static Optional<LocalDate> ofNumber(
      SoundCells row, String heading, Severity severity, Cell.Number number) {
    Optional<BigDecimal> value = number.decimal();
    if (value.isPresent() && DayNumber.plausible(value.get())) {
      LocalDate day = DayNumber.day(value.get(), row.rules().from1904());
      Message problem = Message.of("cells.date.bareNumber", SoundCells.oneLine(number), day);
      Message expected = Message.of("cells.date.formatted");
      row.warn(ProblemKind.DATE_WITHOUT_FORMAT, heading, problem, expected);
      return Optional.of(day);
    }
    Optional<LocalDate> ofMonth = dayOfMonth(row, number.shown());
    if (ofMonth.isPresent()) {
      return ofMonth;
    }
    DateText.Reading reading = DateText.read(number.shown(), Optional.empty());
    return ofText(row, heading, severity, number, reading);
  }
}
