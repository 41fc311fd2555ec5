package clenchbook.workload.posture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.workload.methods.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 11226:2000, table 1 and figure 2 (from memory). */
class TrunkPostureTest {

  @ParameterizedTest
  @CsvSource({"20, 4", "30, 3.25", "40, 2.5", "50, 1.75", "60, 1"})
  void the_holding_time_falls_from_four_minutes_to_one(double degrees, double minutes) {
    assertEquals(minutes, TrunkPosture.longestHoldMinutes(degrees).number().orElseThrow(), 1e-12);
  }

  @Test
  void a_hold_is_set_against_its_longest_time() {
    assertEquals(0.5, TrunkPosture.shareOfLongestHold(40, 75).number().orElseThrow(), 1e-12);
  }

  @Test
  void beyond_sixty_degrees_no_time_is_computed_and_the_reason_is_given() {
    Score score = TrunkPosture.shareOfLongestHold(70, 30);
    assertTrue(score.number().isEmpty());
    assertEquals(
        "trunk 70 degrees is above 60: not recommended by the standard for any holding time",
        score.why().orElseThrow().english());
  }

  @Test
  void below_twenty_degrees_the_standard_sets_no_time() {
    assertTrue(TrunkPosture.longestHoldMinutes(10).number().isEmpty());
    assertTrue(
        TrunkPosture.longestHoldMinutes(10).why().orElseThrow().english().contains("acceptable"));
    assertTrue(TrunkPosture.shareOfLongestHold(40, 0).number().isEmpty());
  }
}
