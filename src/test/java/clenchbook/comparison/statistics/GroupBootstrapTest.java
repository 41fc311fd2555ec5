package clenchbook.comparison.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GroupBootstrapTest {

  @Test
  void the_same_seed_draws_the_same() {
    assertArrayEquals(GroupBootstrap.of(7, 3, 42).draw(2), GroupBootstrap.of(7, 3, 42).draw(2));
    assertEquals(7, Arrays.stream(GroupBootstrap.of(7, 3, 42).draw(2)).sum());
  }

  /** A mean of many: the percentile interval is close to Student's (common practice, no source). */
  @Test
  void the_interval_of_a_mean_is_close_to_students() {
    double[] values = new Random(4).doubles(200, 0, 10).toArray();
    Moments moments = Moments.of(values);
    Interval student = StudentT.interval(moments.mean(), Math.sqrt(moments.variance() / 200), 199);
    Interval drawn =
        GroupBootstrap.of(200, 4000, 1)
            .interval(
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
    GroupBootstrap draws = GroupBootstrap.of(5, 100, 1);
    assertTrue(draws.interval(counts -> counts[0] == 0 ? Double.NaN : 1).isEmpty());
    assertTrue(GroupBootstrap.of(0, 100, 1).interval(counts -> 1).isEmpty());
  }

  @Test
  void a_draw_without_bounds_opens_the_upper_end() {
    Interval open =
        GroupBootstrap.of(3, 500, 9)
            .interval(counts -> counts[0] == 0 ? Double.POSITIVE_INFINITY : counts[0])
            .orElseThrow();
    assertEquals(Double.POSITIVE_INFINITY, open.high());
  }
}
