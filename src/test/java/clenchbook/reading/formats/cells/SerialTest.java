package clenchbook.reading.formats.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SerialTest {
  /**
   * The 1900 system counts a 29 February 1900 that never was, as day 60, so days 1 to 59 and those
   * from 61 have different starts; 1904 has no such day (ECMA-376 part 1, 18.17.4.1, from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1900-01-01",
    "59, 1900-02-28",
    "60, 1900-03-01",
    "61, 1900-03-01",
    "36526, 2000-01-01",
    "39448, 2008-01-01",
    "46095, 2026-03-14",
    "2958465, 9999-12-31",
  })
  void days_of_the_1900_system(long number, LocalDate day) {
    assertEquals(day, Serial.day(number, false));
  }

  @ParameterizedTest
  @CsvSource({"0, 1904-01-01", "1, 1904-01-02", "44633, 2026-03-14", "37986, 2008-01-01"})
  void days_of_the_1904_system(long number, LocalDate day) {
    assertEquals(day, Serial.day(number, true));
  }

  /** Outside check: Apache POI's DateUtil for the same numbers, in both systems. */
  @Test
  void the_reference_library_reads_the_same_moments() {
    for (double serial = 61; serial < 80_000; serial += 997.37) {
      for (boolean from1904 : new boolean[] {false, true}) {
        LocalDateTime reference = DateUtil.getLocalDateTime(serial, from1904, true);
        LocalDateTime own = Serial.moment(new BigDecimal(Double.toString(serial)), from1904);
        assertEquals(reference, own, serial + " " + from1904);
      }
    }
  }

  @Test
  void a_part_of_a_day_is_a_length_of_time_to_the_second() {
    Cell cell = Serial.cell(0, false, "0.03125", CellFormat.of("h:mm"), false);
    assertEquals(Duration.ofMinutes(45), assertInstanceOf(Cell.Span.class, cell).length());
    Cell third = Serial.cell(0, false, "0.33333333333333331", CellFormat.of("h:mm"), false);
    assertEquals(Duration.ofHours(8), assertInstanceOf(Cell.Span.class, third).length());
    Cell long30 = Serial.cell(0, false, "1.25", CellFormat.of("[h]:mm"), false);
    assertEquals(Duration.ofHours(30), assertInstanceOf(Cell.Span.class, long30).length());
  }

  @Test
  void a_number_beyond_all_days_stays_a_number() {
    CellFormat date = CellFormat.of("yyyy-mm-dd");
    assertInstanceOf(Cell.Number.class, Serial.cell(0, false, "2958466", date, false));
    assertInstanceOf(Cell.Number.class, Serial.cell(0, false, "-1", date, false));
    assertInstanceOf(Cell.Number.class, Serial.cell(0, false, "1E300", date, false));
    assertInstanceOf(Cell.Number.class, Serial.cell(0, false, "soon", date, false));
  }
}
