package clenchbook.workload;

import static clenchbook.workload.strain.WristDirection.FLEXION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.workload.methods.Score;
import clenchbook.workload.strain.CompositeStrainIndex;
import clenchbook.workload.strain.CumulativeStrainIndex;
import clenchbook.workload.strain.CumulativeStrainIndex.TaskHours;
import clenchbook.workload.strain.HandEffort;
import clenchbook.workload.strain.RevisedStrainIndex;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * COSI and CUSI. Source of the structure: Garg, Moore, Kapellusch, Ergonomics 60(8):1033-1041, 2017
 * (citation from memory). The numbers are the formula worked by hand; the properties follow from
 * it.
 */
class CombinedStrainIndexTest {

  private static final HandEffort HARD = new HandEffort(5, 4, 1, 0, FLEXION);
  private static final HandEffort LIGHT = new HandEffort(2, 6, 1, 0, FLEXION);

  @Test
  void two_kinds_of_effort_add_in_falling_order_of_their_index() {
    // A: 6.700 x 1.10 x 0.76 x 1.0001 = 5.602; B: 2.616 x 1.60 x 0.76 x 1.0001 = 3.1815;
    // 5.6020 + 3.1815 / 1.60 x (EM(10) 2.60 - EM(4) 1.10) = 8.5847.
    assertEquals(5.602, number(RevisedStrainIndex.of(HARD, 8)), 0.0005);
    assertEquals(3.1815, number(RevisedStrainIndex.of(LIGHT, 8)), 0.0005);
    assertEquals(8.5847, number(CompositeStrainIndex.of(List.of(HARD, LIGHT), 8)), 0.0005);
    assertEquals(8.5847, number(CompositeStrainIndex.of(List.of(LIGHT, HARD), 8)), 0.0005);
  }

  @Test
  void one_kind_of_effort_is_the_plain_index() {
    assertEquals(
        number(RevisedStrainIndex.of(LIGHT, 3)),
        number(CompositeStrainIndex.of(List.of(LIGHT), 3)),
        1e-12);
  }

  @Test
  void two_equal_kinds_are_one_kind_with_twice_the_efforts() {
    HandEffort doubled = new HandEffort(2, 12, 1, 0, FLEXION);
    assertEquals(
        number(RevisedStrainIndex.of(doubled, 3)),
        number(CompositeStrainIndex.of(List.of(LIGHT, LIGHT), 3)),
        1e-12);
  }

  @Test
  void efforts_above_ninety_a_minute_use_the_power_branch_only_beyond_ninety() {
    HandEffort fast = new HandEffort(2, 60, 0.4, 0, FLEXION);
    double single = number(RevisedStrainIndex.of(fast, 2));
    double expected = single / 15.1 * RevisedStrainIndex.effortsMultiplier(120); // EM(60) = 15.1
    assertEquals(expected, number(CompositeStrainIndex.of(List.of(fast, fast), 2)), 1e-9);
  }

  @Test
  void two_tasks_of_a_day_add_over_their_real_hours() {
    // A for 2 h (3.4917) and B for 4 h (2.4487):
    // 3.4917 + 2.4487 / 0.76977 x (HM(6) 0.89026 - HM(2) 0.62338) = 4.3406.
    assertEquals(3.4917, number(CompositeStrainIndex.of(List.of(HARD), 2)), 0.0005);
    assertEquals(2.4487, number(CompositeStrainIndex.of(List.of(LIGHT), 4)), 0.0005);
    TaskHours hard = new TaskHours(List.of(HARD), 2);
    TaskHours light = new TaskHours(List.of(LIGHT), 4);
    assertEquals(4.3406, number(CumulativeStrainIndex.of(List.of(hard, light))), 0.0005);
    assertEquals(4.3406, number(CumulativeStrainIndex.of(List.of(light, hard))), 0.0005);
  }

  @Test
  void three_tasks_carry_the_hours_of_both_before() {
    TaskHours hard = new TaskHours(List.of(HARD), 2);
    TaskHours light = new TaskHours(List.of(LIGHT), 4);
    TaskHours rest = new TaskHours(List.of(new HandEffort(0.5, 6, 1, 0, FLEXION)), 1);
    double third =
        number(CompositeStrainIndex.of(rest.efforts(), 1))
            / RevisedStrainIndex.hoursMultiplier(1)
            * (RevisedStrainIndex.hoursMultiplier(7) - RevisedStrainIndex.hoursMultiplier(6));
    assertEquals(
        number(CumulativeStrainIndex.of(List.of(hard, light))) + third,
        number(CumulativeStrainIndex.of(List.of(rest, hard, light))),
        1e-9);
  }

  @Test
  void a_task_split_in_two_halves_of_the_day_is_the_same_task() {
    TaskHours whole = new TaskHours(List.of(HARD, LIGHT), 5);
    TaskHours half = new TaskHours(List.of(HARD, LIGHT), 2.5);
    assertEquals(
        number(CumulativeStrainIndex.of(List.of(whole))),
        number(CumulativeStrainIndex.of(List.of(half, half))),
        1e-9);
  }

  @Test
  void efforts_that_together_do_not_fit_in_the_minute_are_said() {
    HandEffort long40 = new HandEffort(2, 8, 5, 0, FLEXION);
    Score score = CompositeStrainIndex.of(List.of(long40, long40), 2);
    assertTrue(score.number().isEmpty());
    assertEquals(
        "the efforts together do not fit in a minute", score.why().orElseThrow().english());
  }

  @Test
  void tasks_of_more_than_a_day_are_said() {
    TaskHours long13 = new TaskHours(List.of(LIGHT), 13);
    assertEquals(
        "26 hours of tasks in one day",
        CumulativeStrainIndex.of(List.of(long13, long13)).why().orElseThrow().english());
  }

  private static double number(Score score) {
    return score.number().orElseThrow();
  }
}
