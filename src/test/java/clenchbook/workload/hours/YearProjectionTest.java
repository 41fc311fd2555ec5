package clenchbook.workload.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.values.Basis;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class YearProjectionTest {

  private static final LocalDate START = LocalDate.of(2026, 1, 1);

  /** One day a month with so many hours, from January on. */
  private static List<WorkDay> months(int year, double... hours) {
    List<WorkDay> days = new ArrayList<>();
    for (int month = 0; month < hours.length; month++) {
      days.add(day(LocalDate.of(year, month + 1, 15), hours[month]));
    }
    return days;
  }

  static WorkDay day(LocalDate date, double hours) {
    return new WorkDay(
        date,
        new Load(
            Map.of(Activity.TRIM, Minutes.of(hours * 60, Basis.MEASURED)),
            1,
            ShoeTally.NONE,
            1,
            0));
  }

  private static YearProjection at(LocalDate asAt, List<WorkDay> one, List<WorkDay> other) {
    List<WorkDay> all = new ArrayList<>(one);
    all.addAll(other);
    return new YearProjection(WorkDays.of(all), START, asAt);
  }

  private static final List<WorkDay> LAST_YEAR =
      months(2025, 5, 5, 10, 10, 10, 10, 10, 10, 10, 10, 5, 5);

  @Test
  void the_same_share_of_last_year_tells_the_rest_of_this_one() {
    // 24 hours by the end of March; last year 20 of 100 by then: 24 / 0.2.
    YearProjection projection = at(LocalDate.of(2026, 3, 31), LAST_YEAR, months(2026, 6, 6, 12));
    assertEquals(120, projection.hours(), 1e-9);
    assertEquals("hours to date over the same share of last year", projection.basis().english());
  }

  @Test
  void before_a_tenth_of_last_year_had_passed_days_count_instead() {
    // 5 of 100 by the end of January: pro rata, 6 x 365 / 31.
    YearProjection projection = at(LocalDate.of(2026, 1, 31), LAST_YEAR, months(2026, 6));
    assertEquals(6.0 * 365 / 31, projection.hours(), 1e-9);
    assertEquals("hours to date pro rata by days", projection.basis().english());
  }

  @Test
  void exactly_a_tenth_is_enough() {
    YearProjection projection = at(LocalDate.of(2026, 2, 28), LAST_YEAR, months(2026, 6, 6));
    assertEquals(120, projection.hours(), 1e-9);
  }

  @Test
  void a_last_year_with_an_empty_month_does_not_count() {
    List<WorkDay> gap = months(2025, 5, 5, 10, 10, 10, 10, 10, 10, 10, 10, 5);
    YearProjection projection = at(LocalDate.of(2026, 3, 31), gap, months(2026, 6, 6, 12));
    assertEquals(24.0 * 365 / 90, projection.hours(), 1e-9);
  }

  @Test
  void on_the_last_day_the_projection_is_the_year_itself() {
    YearProjection projection = at(LocalDate.of(2026, 12, 31), LAST_YEAR, months(2026, 6, 6, 12));
    assertEquals(24, projection.hours(), 0);
    assertEquals("the whole year", projection.basis().english());
  }

  @Test
  void a_limit_passed_already_is_dated_by_the_day_it_happened() {
    YearProjection projection = at(LocalDate.of(2026, 3, 31), LAST_YEAR, months(2026, 6, 6, 12));
    assertEquals(Optional.of(LocalDate.of(2026, 3, 15)), projection.passes(20));
  }

  @Test
  void a_limit_that_will_be_passed_is_dated_by_last_years_course() {
    // 120 projected over last year's course: 30 % by 15 April = 36, 40 % by 15 May = 48 > 40.
    YearProjection projection = at(LocalDate.of(2026, 3, 31), LAST_YEAR, months(2026, 6, 6, 12));
    assertEquals(Optional.of(LocalDate.of(2026, 5, 15)), projection.passes(40));
    assertTrue(projection.passes(120).isEmpty());
    assertEquals(Optional.of(LocalDate.of(2026, 12, 15)), projection.passes(119.9));
  }

  @Test
  void pro_rata_passes_a_limit_day_by_day() {
    // 6 hours by 31 January, 6/31 a day: above 12 after day 62 is day 63, 4 March.
    YearProjection projection = at(LocalDate.of(2026, 1, 31), List.of(), months(2026, 6));
    assertEquals(Optional.of(LocalDate.of(2026, 3, 4)), projection.passes(12));
  }

  @Test
  void without_any_work_nothing_is_projected() {
    YearProjection projection = at(LocalDate.of(2026, 6, 30), List.of(), List.of());
    assertEquals(0, projection.hours(), 0);
    assertTrue(projection.passes(1).isEmpty());
  }
}
