package clenchbook.workload.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigurePeriodTest {

  @Test
  void weeks_are_named_by_iso_8601_across_the_turn_of_the_year() {
    // ISO 8601:2019: 29 Dec 2025 to 4 Jan 2026 is week 1 of 2026; 1 Jan 2027 lies in 2026-W53.
    assertEquals("2026-W01", FigurePeriod.week(LocalDate.of(2025, 12, 29)).name());
    assertEquals("2026-W53", FigurePeriod.week(LocalDate.of(2027, 1, 1)).name());
    assertEquals(LocalDate.of(2026, 10, 5), FigurePeriod.week(LocalDate.of(2026, 10, 11)).from());
    assertEquals("2026-W41", FigurePeriod.week(LocalDate.of(2026, 10, 11)).name());
  }

  @Test
  void the_first_week_is_whole_and_the_last_ends_with_the_year_to_date() {
    FigurePeriod year = FigurePeriod.year(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 1, 31));
    List<FigurePeriod> weeks = year.weeks();
    assertEquals(5, weeks.size());
    assertEquals(LocalDate.of(2025, 12, 29), weeks.get(0).from());
    assertEquals(LocalDate.of(2026, 1, 31), weeks.get(4).to());
  }

  @Test
  void months_follow_one_another_to_the_day_that_counts() {
    FigurePeriod year = FigurePeriod.year(LocalDate.of(2026, 4, 6), LocalDate.of(2027, 1, 31));
    assertEquals("2026", year.name());
    assertEquals("2026-04", year.months().get(0).name());
    assertEquals("2027-01", year.months().get(9).name());
    assertEquals(10, year.months().size());
  }
}
