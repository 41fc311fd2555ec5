package clenchbook.workload.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkDaysTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

  private static WorkDays worked(int... offsets) {
    return WorkDays.of(
        Arrays.stream(offsets)
            .mapToObj(offset -> YearProjectionTest.day(MONDAY.plusDays(offset), 6))
            .toList());
  }

  @Test
  void the_longest_run_is_the_first_of_the_longest() {
    WorkDays days = worked(0, 1, 2, 4, 5, 7, 8, 9);
    WorkDays.Run run = days.longestRun(MONDAY, MONDAY.plusDays(30)).orElseThrow();
    assertEquals(MONDAY, run.first());
    assertEquals(3, run.days());
  }

  @Test
  void a_run_is_counted_inside_the_period_only() {
    WorkDays days = worked(0, 1, 2, 3);
    assertEquals(2, days.longestRun(MONDAY.plusDays(2), MONDAY.plusDays(9)).orElseThrow().days());
    assertTrue(days.longestRun(MONDAY.plusDays(5), MONDAY.plusDays(9)).isEmpty());
  }

  @Test
  void a_day_of_driving_breaks_a_run() {
    WorkDay drive =
        new WorkDay(MONDAY.plusDays(1), Load.of(Activity.DRIVE, new Minutes(60, 0, 0, 0)));
    WorkDays days =
        WorkDays.of(
            List.of(
                YearProjectionTest.day(MONDAY, 5),
                drive,
                YearProjectionTest.day(MONDAY.plusDays(2), 5)));
    assertEquals(1, days.longestRun(MONDAY, MONDAY.plusDays(5)).orElseThrow().days());
    assertEquals(11, days.hours(MONDAY, MONDAY.plusDays(5)), 1e-9);
  }
}
