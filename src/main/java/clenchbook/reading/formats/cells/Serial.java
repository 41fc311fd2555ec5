package clenchbook.reading.formats.cells;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Days as spreadsheets number them. In the 1900 system day 1 is 1 January 1900 and day 60 is a 29
 * February 1900 that never was, kept for the sake of the first spreadsheets, so that only from day
 * 61 on the count is true; day 60 is read as 28 February + 1 = 1 March. In the 1904 system day 0 is
 * 1 January 1904.
 */
public final class Serial {
  private static final long LAST = 2_958_465; // 31 December 9999
  private static final int SECONDS_A_DAY = 86_400;
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 31);
  private static final LocalDate START_1904 = LocalDate.of(1904, 1, 1);

  private Serial() {}

  /** The cell of a number under a format of date or time, or a plain number where it is neither. */
  public static Cell cell(
      int column, boolean formula, String raw, CellFormat format, boolean from1904) {
    Optional<BigDecimal> value = Cell.Number.decimalOf(raw);
    if (value.isEmpty() || value.get().abs().compareTo(BigDecimal.valueOf(LAST + 1)) >= 0) {
      return new Cell.Number(column, formula, raw, CellFormat.GENERAL);
    }
    boolean time = format.kind() == CellFormat.Kind.TIME || partOfFirstDay(value.get(), from1904);
    if (time) {
      return new Cell.Span(column, formula, length(value.get()));
    }
    if (value.get().signum() < 0) {
      return new Cell.Number(column, formula, raw, CellFormat.GENERAL);
    }
    return new Cell.Moment(column, formula, moment(value.get(), from1904), format);
  }

  private static boolean partOfFirstDay(BigDecimal value, boolean from1904) {
    return value.signum() > 0 && value.compareTo(BigDecimal.ONE) < 0 && !from1904;
  }

  /** A share of days as a length, to the nearest second. */
  static Duration length(BigDecimal days) {
    BigDecimal seconds = days.multiply(BigDecimal.valueOf(SECONDS_A_DAY));
    return Duration.ofSeconds(seconds.setScale(0, RoundingMode.HALF_UP).longValue());
  }

  /** The moment of a day number, to the nearest second. */
  static LocalDateTime moment(BigDecimal serial, boolean from1904) {
    long seconds = length(serial).toSeconds();
    long day = Math.floorDiv(seconds, SECONDS_A_DAY);
    return day(day, from1904).atStartOfDay().plusSeconds(seconds - day * SECONDS_A_DAY);
  }

  /** The day of a whole day number. */
  static LocalDate day(long number, boolean from1904) {
    if (from1904) {
      return START_1904.plusDays(number);
    }
    return BEFORE_1900.plusDays(number > 60 ? number - 1 : number);
  }
}
