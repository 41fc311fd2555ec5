package clenchbook.reading.cells;

import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.Cell;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** A day in a cell: a true date, a bare day number, or a text in one of many orders. */
final class DateCell {
  private static final String EXPECTED = "a day such as 2026-03-14";

  private DateCell() {}

  /** A day without which the row can't count. */
  static Optional<LocalDate> required(SoundCells row, String heading) {
    if (!row.has(heading)) {
      String problem = heading + " is missing";
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
      String problem = SoundCells.quoted(cell) + " is not a date";
      row.say(severity, ProblemKind.DATE_UNREADABLE, heading, problem, EXPECTED);
      return Optional.empty();
    }
    if (reading.days().size() > 1) {
      String problem =
          SoundCells.quoted(cell)
              + " may mean "
              + reading.days().get(0)
              + " or "
              + reading.days().get(1);
      String expected = "a true date, or the setting Date order (dmy or mdy)";
      row.say(severity, ProblemKind.DATE_AMBIGUOUS, heading, problem, expected);
      return Optional.empty();
    }
    LocalDate day = reading.days().get(0);
    if (reading.otherOrder()) {
      String problem =
          SoundCells.quoted(cell) + " is not in the order of the setting; read as " + day;
      row.warn(ProblemKind.DATE_OTHER_ORDER, heading, problem, "the order that Date order sets");
    }
    return Optional.of(day);
  }

  /** A day number whose format is lost, or a day written as eight digits. */
  private static Optional<LocalDate> ofNumber(
      SoundCells row, String heading, Severity severity, Cell.Number number) {
    Optional<BigDecimal> value = number.decimal();
    if (value.isPresent() && DayNumber.plausible(value.get())) {
      LocalDate day = DayNumber.day(value.get(), row.rules().from1904());
      String problem = SoundCells.quoted(number) + " is a bare number; read as day " + day;
      row.warn(ProblemKind.DATE_WITHOUT_FORMAT, heading, problem, "a cell formatted as a date");
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
