package clenchbook.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class GroupBootstrapTest {

  private static Optional<Interval> interval(
      GroupBootstrap draws, ToDoubleFunction<int[]> estimate) {
    return draws.intervals(1, counts -> new double[] {estimate.applyAsDouble(counts)}).get(0);
  }

  @Test
  void the_same_seed_draws_the_same_and_each_draw_has_all_places_filled() {
    List<int[]> first = new ArrayList<>();
    List<int[]> again = new ArrayList<>();
    interval(new GroupBootstrap(7, 30, 42), counts -> first.add(counts.clone()) ? 1 : 0);
    interval(new GroupBootstrap(7, 30, 42), counts -> again.add(counts.clone()) ? 1 : 0);
    assertEquals(30, first.size());
    for (int i = 0; i < 30; i++) {
      assertArrayEquals(first.get(i), again.get(i));
      assertEquals(7, Arrays.stream(first.get(i)).sum());
    }
    assertFalse(Arrays.equals(first.get(0), first.get(1)));
  }

  /** A mean of many: the percentile interval is close to Student's (common practice, no source). */
  @Test
  void the_interval_of_a_mean_is_close_to_students() {
    double[] values = new Random(4).doubles(200, 0, 10).toArray();
    Moments moments = Moments.of(values);
    Interval student = StudentT.interval(moments.mean(), Math.sqrt(moments.variance() / 200), 199);
    Interval drawn =
        interval(
                new GroupBootstrap(200, 4000, 1),
                counts -> {
                  double sum = 0;
                  for (int i = 0; i < counts.length; i++) {
                    sum += counts[i] * values[i];
                  }
                  return sum / counts.length;
                })
            .orElseThrow();
    assertEquals(student.low(), drawn.low(), 0.06);
    assertEquals(student.high(), drawn.high(), 0.06);
  }

  @Test
  void draws_that_mostly_fail_give_no_interval() {
    GroupBootstrap draws = new GroupBootstrap(5, 100, 1);
    assertTrue(interval(draws, counts -> counts[0] == 0 ? Double.NaN : 1).isEmpty());
    assertTrue(interval(new GroupBootstrap(0, 100, 1), counts -> 1).isEmpty());
  }

  @Test
  void a_draw_without_bounds_opens_the_upper_end() {
    Interval open =
        interval(
                new GroupBootstrap(3, 500, 9),
                counts -> counts[0] == 0 ? Double.POSITIVE_INFINITY : counts[0])
            .orElseThrow();
    assertEquals(Double.POSITIVE_INFINITY, open.high());
  }
}
