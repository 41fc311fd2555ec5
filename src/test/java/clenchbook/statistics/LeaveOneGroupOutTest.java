package clenchbook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class LeaveOneGroupOutTest {

  private static List<Observation> grouped(long seed, int groups) {
    List<Observation> observations = new ArrayList<>();
    for (Observation each : StratifiedDifferenceTest.unequal(seed)) {
      String group = "g" + Math.floorMod(each.group().hashCode(), groups);
      observations.add(new Observation(group, each.stratum(), each.side(), each.value()));
    }
    return observations;
  }

  /** The definition, written out again without any of the totals. */
  private static double[] byHand(List<Observation> observations) {
    return new TreeSet<>(observations.stream().map(Observation::group).toList())
        .stream()
            .mapToDouble(
                group ->
                    StratifiedDifference.estimate(
                            observations.stream()
                                .filter(each -> !each.group().equals(group))
                                .toList())
                        .map(StratifiedEstimate::difference)
                        .orElse(Double.NaN))
            .toArray();
  }

  @Test
  void each_group_is_left_out_once_under_the_same_rule() {
    List<Observation> observations = grouped(3, 14);
    double[] without = byHand(observations);
    int groups = without.length;
    double mean = 0;
    for (double each : without) {
      mean += each / groups;
    }
    double squares = 0;
    for (double each : without) {
      squares += (each - mean) * (each - mean);
    }
    StratifiedEstimate full = StratifiedDifference.estimate(observations).orElseThrow();
    double reach =
        StudentT.quantile(groups - 2 * full.strata().size())
            * Math.sqrt(squares * (groups - 1) / groups);
    Interval interval = full.leaveOneOut().orElseThrow();
    assertEquals(full.difference() - reach, interval.low(), 1e-9);
    assertEquals(full.difference() + reach, interval.high(), 1e-9);
  }

  /** The sleep data with each value a group of its own, the first left out by hand. */
  @Test
  void a_group_of_one_value_moves_its_own_mean_only() {
    List<Observation> sleep =
        PublishedSamples.pair("s", PublishedSamples.SLEEP_1, PublishedSamples.SLEEP_2);
    double[] without = byHand(sleep);
    assertEquals(20, without.length);
    assertEquals((7.5 - 0.7) / 9 - 2.33, without[0], 1e-12);
    assertTrue(StratifiedDifference.estimate(sleep).orElseThrow().leaveOneOut().isPresent());
  }

  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, upper critical values of
   * Student's t, column 0.025: 12.706, 2.776, 2.228, 2.042 (seen in a copy on pdfcoffee.com).
   */
  @Test
  void students_quantiles_are_the_tables() {
    assertEquals(12.706, StudentT.quantile(1), 5e-4);
    assertEquals(2.776, StudentT.quantile(4), 5e-4);
    assertEquals(2.228, StudentT.quantile(10), 5e-4);
    assertEquals(2.042, StudentT.quantile(30), 5e-4);
  }

  @Test
  void too_few_groups_for_the_strata_give_no_interval() {
    StratifiedEstimate few = StratifiedDifference.estimate(grouped(3, 5)).orElseThrow();
    assertEquals(3, few.strata().size());
    assertTrue(few.leaveOneOut().isEmpty());
  }

  @Test
  void a_group_that_alone_carries_a_side_gives_no_interval() {
    List<Observation> observations = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      observations.add(new Observation("only", "s", Side.A, 5 + i % 3));
      observations.add(new Observation("other " + i, "s", Side.B, 7 + i % 2));
    }
    StratifiedEstimate one = StratifiedDifference.estimate(observations).orElseThrow();
    assertTrue(one.plain().isPresent());
    assertEquals(Optional.empty(), one.leaveOneOut());
  }
}
