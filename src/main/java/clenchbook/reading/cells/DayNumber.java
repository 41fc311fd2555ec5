package clenchbook.reading.cells;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;

/** Days numbered by a spreadsheet, where a cell has lost the format that showed them as days. */
public final class DayNumber {
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);
  private static final LocalDate START_1904 = LocalDate.of(1904, 1, 1);
  private static final BigDecimal FIRST = new BigDecimal(20_000);
  private static final BigDecimal LAST = new BigDecimal(80_000);

  private DayNumber() {}

  /** Whether a number without format may be a day from 1954 to 2119. */
  public static boolean plausible(BigDecimal number) {
    return number.compareTo(FIRST) > 0 && number.compareTo(LAST) < 0;
  }

  /** The day of a number that is {@link #plausible}; a part of a day is dropped. */
  public static LocalDate day(BigDecimal number, boolean from1904) {
    long days = number.setScale(0, RoundingMode.DOWN).longValue();
    return (from1904 ? START_1904 : BEFORE_1900).plusDays(days);
  }
}
