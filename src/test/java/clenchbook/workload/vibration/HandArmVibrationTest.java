package clenchbook.workload.vibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.workload.methods.Score;
import clenchbook.workload.vibration.HandArmVibration.ToolHours;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandArmVibrationTest {

  /** HSE, hand-arm vibration ready-reckoner, worked example: 5 m/s2 for 3 hours is 150 points. */
  @Test
  void five_metres_per_second_squared_for_three_hours_is_150_points() {
    assertEquals(150, number(HandArmVibration.points(List.of(new ToolHours(5, 3)))), 1e-9);
  }

  /** Directive 2002/44/EC, article 3, and the HSE ready-reckoner: 2.5 = 100, 5.0 = 400 points. */
  @Test
  void the_action_and_limit_values_are_100_and_400_points() {
    List<ToolHours> action = List.of(new ToolHours(HandArmVibration.ACTION_VALUE, 8));
    List<ToolHours> limit = List.of(new ToolHours(HandArmVibration.LIMIT_VALUE, 8));
    assertEquals(100, number(HandArmVibration.points(action)), 1e-9);
    assertEquals(400, number(HandArmVibration.points(limit)), 1e-9);
    assertEquals(2.5, number(HandArmVibration.dailyExposure(action)), 1e-12);
    assertEquals(5.0, number(HandArmVibration.dailyExposure(limit)), 1e-12);
  }

  /** Points = 2 a2 t, worked by hand; the rule from memory, consistent with the HSE example. */
  @ParameterizedTest
  @CsvSource({
    "2.5, 0.25, 3.125",
    "2.5, 3, 37.5",
    "3, 0.5, 9",
    "3, 4, 72",
    "5, 1, 50",
    "5, 8, 400",
    "7, 2, 196",
    "10, 0.25, 50",
    "10, 8, 1600"
  })
  void points_follow_the_square_of_the_vibration_and_the_time(
      double vibration, double hours, double expected) {
    assertEquals(
        expected, number(HandArmVibration.points(List.of(new ToolHours(vibration, hours)))), 1e-9);
  }

  @Test
  void tools_add_as_points_and_as_the_root_of_squares() {
    List<ToolHours> both = List.of(new ToolHours(4, 2), new ToolHours(6, 1));
    assertEquals(136, number(HandArmVibration.points(both)), 1e-9); // 64 + 72
    assertEquals(2.9155, number(HandArmVibration.dailyExposure(both)), 0.00005);
  }

  @Test
  void no_tool_time_or_an_impossible_vibration_is_said() {
    assertTrue(HandArmVibration.points(List.of()).number().isEmpty());
    assertEquals(
        "0 tool hours in one day",
        HandArmVibration.points(List.of()).why().orElseThrow().english());
    assertEquals(
        "vibration 0 m/s2 is not above 0 and up to 100",
        HandArmVibration.dailyExposure(List.of(new ToolHours(0, 1))).why().orElseThrow().english());
  }

  private static double number(Score score) {
    return score.number().orElseThrow();
  }
}
