package clenchbook.workload.strain;

import static clenchbook.workload.strain.WristDirection.EXTENSION;
import static clenchbook.workload.strain.WristDirection.FLEXION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.workload.methods.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The five multipliers and their product. Source of the equations: Garg, Moore, Kapellusch,
 * Ergonomics 60(7):912-922, 2017. The values are those equations worked by hand, not printed in the
 * paper; the joints are a property of the equations themselves.
 */
class RevisedStrainIndexTest {

  @ParameterizedTest
  @CsvSource({
    "0.1, 1.574",
    "0.2, 2.616",
    "0.3, 3.706",
    "0.4, 5.024",
    "0.5, 6.700",
    "0.7, 11.510",
    "1, 25.610"
  })
  void intensity_multiplier_follows_the_published_equations(double intensity, double expected) {
    assertEquals(expected, RevisedStrainIndex.intensityMultiplier(intensity), 0.0005);
  }

  @ParameterizedTest
  @CsvSource({"2, 0.60", "9, 2.35", "20, 5.10", "90, 22.60"})
  void efforts_multiplier_follows_the_published_equations(double perMinute, double expected) {
    assertEquals(expected, RevisedStrainIndex.effortsMultiplier(perMinute), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.605", "1, 0.76", "2, 1.07", "5, 2.00", "60, 19.05"})
  void duration_multiplier_follows_the_published_equations(double seconds, double expected) {
    assertEquals(expected, RevisedStrainIndex.durationMultiplier(seconds), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "0, FLEXION, 1.0",
    "30, FLEXION, 1.3720",
    "60, FLEXION, 1.8592",
    "0, EXTENSION, 1.0",
    "30, EXTENSION, 1.0",
    "45, EXTENSION, 1.0630",
    "60, EXTENSION, 1.2520"
  })
  void posture_multiplier_follows_the_published_equations(
      double degrees, WristDirection direction, double expected) {
    assertEquals(expected, RevisedStrainIndex.postureMultiplier(degrees, direction), 0.00005);
  }

  @ParameterizedTest
  @CsvSource({"0.05, 0.20", "1, 0.5190", "4, 0.7698", "8, 1.0001", "10, 1.1042"})
  void hours_multiplier_follows_the_published_equations(double hours, double expected) {
    assertEquals(expected, RevisedStrainIndex.hoursMultiplier(hours), 0.00005);
  }

  @Test
  void the_two_halves_of_each_equation_meet_at_their_joint() {
    double hair = 1e-9;
    assertEquals(
        RevisedStrainIndex.intensityMultiplier(0.4),
        RevisedStrainIndex.intensityMultiplier(0.4 + hair),
        0.01);
    assertEquals(
        RevisedStrainIndex.effortsMultiplier(90),
        RevisedStrainIndex.effortsMultiplier(90 + hair),
        0.01);
    assertEquals(
        RevisedStrainIndex.durationMultiplier(60),
        RevisedStrainIndex.durationMultiplier(60 + hair),
        0.01);
    assertEquals(
        RevisedStrainIndex.hoursMultiplier(0.05),
        RevisedStrainIndex.hoursMultiplier(0.05 + hair),
        0.01);
  }

  @Test
  void the_index_is_the_product_of_the_five() {
    HandEffort effort = new HandEffort(3, 10, 2, 10, FLEXION);
    // 3.706 x 2.600 x 1.070 x 1.1130 x 0.8903, worked by hand from the equations.
    assertEquals(10.216, number(RevisedStrainIndex.of(effort, 6)), 0.001);
  }

  @Test
  void more_of_anything_never_lowers_the_index() {
    HandEffort effort = new HandEffort(3, 10, 2, 20, FLEXION);
    double index = number(RevisedStrainIndex.of(effort, 4));
    assertTrue(index < number(RevisedStrainIndex.of(new HandEffort(4, 10, 2, 20, FLEXION), 4)));
    assertTrue(index < number(RevisedStrainIndex.of(new HandEffort(3, 12, 2, 20, FLEXION), 4)));
    assertTrue(index < number(RevisedStrainIndex.of(new HandEffort(3, 10, 3, 20, FLEXION), 4)));
    assertTrue(index < number(RevisedStrainIndex.of(new HandEffort(3, 10, 2, 30, FLEXION), 4)));
    assertTrue(index < number(RevisedStrainIndex.of(effort, 5)));
    assertTrue(index > number(RevisedStrainIndex.of(new HandEffort(3, 10, 2, 20, EXTENSION), 4)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 10, 2, 10, 4, effort 0 is not above 0 and up to 10",
    "11, 10, 2, 10, 4, effort 11 is not above 0 and up to 10",
    "3, 0, 2, 10, 4, efforts per minute and seconds per effort must be above 0",
    "3, 40, 2, 10, 4, 40 efforts of 2 s do not fit in a minute",
    "3, 10, 2, 95, 4, wrist 95 degrees is not 0 to 90",
    "3, 10, 2, 10, 0, 0 hours a day is not above 0 and up to 24",
    "3, 10, 2, 10, 25, 25 hours a day is not above 0 and up to 24"
  })
  void an_input_out_of_range_is_said_and_nothing_is_computed(
      double effort, double perMinute, double seconds, double wrist, double hours, String why) {
    Score score =
        RevisedStrainIndex.of(new HandEffort(effort, perMinute, seconds, wrist, FLEXION), hours);
    assertTrue(score.number().isEmpty());
    assertEquals(why, score.why().orElseThrow().english());
  }

  private static double number(Score score) {
    return score.number().orElseThrow();
  }
}
