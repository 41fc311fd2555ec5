package clenchbook.reading.formats.cells;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;

/** Days and times as ISO 8601 writes them, where a file says that a cell is one. */
public final class IsoMoment {
  private static final CellFormat DAY = CellFormat.of("yyyy-mm-dd");

  private IsoMoment() {}

  /** The day, moment or time of day; a text where it is none. */
  public static Cell cell(int column, boolean formula, String text) {
    try {
      String local = text.endsWith("Z") ? text.substring(0, text.length() - 1) : text;
      if (local.indexOf('T') > 0) {
        return new Cell.Moment(column, formula, LocalDateTime.parse(local), DAY);
      }
      return local.indexOf(':') > 0
          ? new Cell.Span(column, formula, sinceMidnight(LocalTime.parse(local)))
          : new Cell.Moment(column, formula, LocalDate.parse(local).atStartOfDay(), DAY);
    } catch (DateTimeException notIso) {
      return new Cell.Text(column, formula, text, false);
    }
  }

  private static Duration sinceMidnight(LocalTime time) {
    return Duration.ofSeconds(time.toSecondOfDay());
  }
}
