package clenchbook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class EffectsModelTest {

  /** With an effect for each sleeper the model is the paired t-test: Student 1908, R's t.test. */
  @Test
  void an_effect_for_each_sleeper_gives_the_published_paired_interval() {
    List<Observation> observations = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      observations.add(new Observation("p" + i, "s", Side.A, PublishedSamples.SLEEP_1[i]));
      observations.add(new Observation("p" + i, "s", Side.B, PublishedSamples.SLEEP_2[i]));
    }
    EffectsModel.Answer answer = EffectsModel.fit(observations).orElseThrow();
    assertEquals(-1.58, answer.difference(), 1e-12);
    assertEquals(-2.4598858, answer.interval().orElseThrow().low(), 5e-8);
    assertEquals(-0.7001142, answer.interval().orElseThrow().high(), 5e-8);
    assertEquals(10, answer.groupsOnBothSides());
  }

  /** A reference library with every effect written out: Apache Commons Math 3.6.1. */
  @Test
  void agrees_with_every_effect_written_out() {
    List<Observation> observations = book(17, 6, 40);
    double[][] x = new double[observations.size()][1 + 5 + 2];
    double[] y = new double[observations.size()];
    for (int i = 0; i < y.length; i++) {
      Observation each = observations.get(i);
      x[i][0] = each.side() == Side.A ? 1 : 0;
      int group = Integer.parseInt(each.group());
      int stratum = Integer.parseInt(each.stratum());
      if (group > 0) {
        x[i][group] = 1;
      }
      if (stratum > 0) {
        x[i][5 + stratum] = 1;
      }
      y[i] = each.value();
    }
    OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
    library.newSampleData(y, x);
    double error = library.estimateRegressionParametersStandardErrors()[1];
    EffectsModel.Answer answer = EffectsModel.fit(observations).orElseThrow();
    assertEquals(library.estimateRegressionParameters()[1], answer.difference(), 1e-10);
    assertEquals(
        StudentT.quantile(40 - 9) * error, answer.interval().orElseThrow().width() / 2, 1e-10);
  }

  private static List<Observation> book(long seed, int groups, int rows) {
    Random random = new Random(seed);
    List<Observation> observations = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      Side side = random.nextBoolean() ? Side.A : Side.B;
      observations.add(
          new Observation(
              String.valueOf(random.nextInt(groups)),
              String.valueOf(random.nextInt(3)),
              side,
              6 + random.nextGaussian() + (side == Side.A ? -3 : 0)));
    }
    return observations;
  }

  @Test
  void horses_that_keep_one_side_leave_nothing_to_tell() {
    List<Observation> observations = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Side side = i % 2 == 0 ? Side.A : Side.B;
      observations.add(new Observation("g" + side + i % 4, "s", side, i));
    }
    assertTrue(EffectsModel.fit(observations).isEmpty());
    assertTrue(EffectsModel.fit(List.of()).isEmpty());
  }

  @Test
  void sides_that_never_share_a_stratum_leave_nothing_to_tell() {
    List<Observation> observations = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Side side = i % 2 == 0 ? Side.A : Side.B;
      observations.add(new Observation("g" + i / 2, "only " + side, side, i));
    }
    assertTrue(EffectsModel.fit(observations).isEmpty());
  }

  @Test
  void a_perfect_fit_gives_a_difference_without_an_interval() {
    List<Observation> observations = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      observations.add(new Observation("g" + i, "s", Side.A, 5 + i));
      observations.add(new Observation("g" + i, "s", Side.B, 8 + i));
    }
    EffectsModel.Answer answer = EffectsModel.fit(observations).orElseThrow();
    assertEquals(-3, answer.difference(), 1e-12);
    assertTrue(answer.interval().isEmpty());
  }
}
