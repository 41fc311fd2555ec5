package clenchbook.reading.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import java.time.Duration;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizeCellTest {
  private static SizeCell.Reading number(String raw, String format) {
    return SizeCell.read(new Cell.Number(0, false, raw, CellFormat.of(format)), false);
  }

  private static SizeCell.Reading day(String at, String format) {
    Cell cell =
        new Cell.Moment(0, false, LocalDateTime.parse(at + "T00:00"), CellFormat.of(format));
    return SizeCell.read(cell, false);
  }

  private static SizeCell.Reading text(String text) {
    return SizeCell.read(new Cell.Text(0, false, text, false), false);
  }

  @ParameterizedTest
  @ValueSource(strings = {"00", "0", "4x0", "5/16", "0: 2; 00: 2", "13 1/2", "M10", "E 4 slim"})
  void a_size_kept_as_text_stays_as_it_is(String size) {
    assertEquals(new SizeCell.Reading(size, false), text(size));
  }

  @ParameterizedTest
  @CsvSource({"0, '', 0", "4, '', 4", "4, 0, 4", "2.5, 0.0, 2.5", "1, 00, 1"})
  void a_plain_number_is_its_own_size(String raw, String format, String size) {
    assertEquals(new SizeCell.Reading(size, false), number(raw, format));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 00, 00",
    "0, 000, 000",
    "0.3125, # ?/?, 5/16",
    "0.375, # ??/??, 3/8",
    "1.125, # ?/?, 1 1/8",
    "4, '0\"x0\"', 4x0",
    "46158, '', 5/16",
  })
  void a_number_shown_as_a_size_is_recovered_from_its_format(
      String raw, String format, String size) {
    assertEquals(new SizeCell.Reading(size, true), number(raw, format));
  }

  /** Typed as 5/16, the 16th of May; typed as 5/8 where the day comes first, the 5th of August. */
  @ParameterizedTest
  @CsvSource({
    "2026-05-16, d-mmm, 5/16",
    "2026-08-05, d-mmm, 5/8",
    "2026-05-08, d-mmm, 5/8",
    "2016-05-01, mmm-yy, 5/16",
    "2026-03-04, mm/dd/yyyy, 3/4",
  })
  void a_fraction_that_became_a_day_is_recovered(String at, String format, String size) {
    assertEquals(new SizeCell.Reading(size, true), day(at, format));
  }

  @Test
  void a_day_that_no_fraction_makes_is_lost() {
    assertEquals(SizeCell.Reading.LOST, day("2026-05-05", "d-mmm"));
    assertEquals(SizeCell.Reading.LOST, SizeCell.read(new Cell.Truth(0, false, true), false));
  }

  @ParameterizedTest
  @CsvSource({"16-May, 5/16", "May-16, 5/16", "5. Aug, 5/8", "2026-05-16, 5/16", "16 May, 5/16"})
  void a_text_file_that_shows_the_day_is_recovered_too(String shown, String size) {
    assertEquals(new SizeCell.Reading(size, true), text(shown));
  }

  @Test
  void a_size_with_its_count_that_became_a_time_is_recovered() {
    Cell cell = new Cell.Span(0, false, Duration.ofMinutes(2));
    assertEquals(new SizeCell.Reading("0: 2", true), SizeCell.read(cell, false));
  }
}
