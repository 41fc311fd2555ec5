package clenchbook.workload.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.workload.methods.Score;
import clenchbook.workload.noise.NoiseDose.NoiseHours;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoiseDoseTest {

  private static final List<NoiseHours> MIXED_DAY =
      List.of(new NoiseHours(100, 2), new NoiseHours(90, 4), new NoiseHours(80, 2));

  /**
   * 29 CFR 1910.95 Appendix A, Table G-16a, printed hours. The cell at 83 dBA differs between
   * copies of the table (21.1 and 21.2; the formula gives 21.11) and is left out.
   */
  @ParameterizedTest
  @CsvSource({
    "80, 32", "81, 27.9", "82, 24.3", "84, 18.4", "85, 16", "86, 13.9",
    "87, 12.1", "88, 10.6", "89, 9.2", "90, 8", "91, 7.0", "92, 6.1",
    "93, 5.3", "94, 4.6", "95, 4", "96, 3.5", "97, 3.0", "98, 2.6",
    "99, 2.3", "100, 2", "101, 1.7", "102, 1.5", "103, 1.3", "104, 1.1",
    "105, 1", "106, 0.87", "107, 0.76", "108, 0.66", "109, 0.57", "110, 0.5",
    "111, 0.44", "112, 0.38", "113, 0.33", "114, 0.29", "115, 0.25", "116, 0.22",
    "117, 0.19", "118, 0.16", "119, 0.14", "120, 0.125", "121, 0.11", "122, 0.095",
    "123, 0.082", "124, 0.072", "125, 0.063", "126, 0.054", "127, 0.047", "128, 0.041",
    "129, 0.036", "130, 0.031"
  })
  void osha_hours_are_those_of_table_g_16a(double dBA, BigDecimal printed) {
    int decimals = Math.max(1, printed.scale());
    BigDecimal hours = BigDecimal.valueOf(NoiseCriterion.OSHA.allowedHours(dBA));
    assertEquals(
        printed.setScale(decimals, RoundingMode.UNNECESSARY),
        hours.setScale(decimals, RoundingMode.HALF_UP));
  }

  /** 29 CFR 1910.95 Appendix A: 8 h at 92 dBA is 131 % with the table's 6.1 h, 131.95 % exactly. */
  @Test
  void eight_hours_at_92_dba_is_a_third_over_the_osha_limit() {
    assertEquals(
        131.95,
        number(NoiseDose.percent(NoiseCriterion.OSHA, List.of(new NoiseHours(92, 8)))),
        0.005);
  }

  /** 29 CFR 1910.95 Appendix A, Table A-1 (from memory) and its formula, TWA = 16.61 log D + 90. */
  @ParameterizedTest
  @CsvSource({"10, 73.4", "50, 85.0", "91, 89.3", "100, 90.0", "200, 95.0", "400, 100.0"})
  void osha_dose_gives_the_eight_hour_level_of_table_a_1(double dose, double level) {
    assertEquals(level, NoiseCriterion.OSHA.eightHourLevel(dose), 0.05);
  }

  /** NIOSH 98-126, Table 1-1 (from memory); hours follow from 85 dBA and 3 dB. */
  @ParameterizedTest
  @CsvSource({
    "82, 16",
    "85, 8",
    "88, 4",
    "91, 2",
    "94, 1",
    "97, 0.5",
    "100, 0.25",
    "103, 0.125",
    "106, 0.0625"
  })
  void niosh_halves_the_time_every_three_decibels(double dBA, double hours) {
    assertEquals(hours, NoiseCriterion.NIOSH.allowedHours(dBA), 1e-9);
  }

  /** Worked by hand from the two formulas. */
  @Test
  void the_same_day_is_far_worse_under_the_recommended_rule() {
    double osha = number(NoiseDose.of(NoiseCriterion.OSHA, MIXED_DAY));
    double niosh = number(NoiseDose.of(NoiseCriterion.NIOSH, MIXED_DAY));
    assertEquals(150, osha, 1e-9); // 100 x (2/2 + 4/8); 80 dBA is no part of this limit
    double action = number(NoiseDose.of(NoiseCriterion.OSHA_ACTION_LEVEL, MIXED_DAY));
    assertEquals(156.25, action, 1e-9); // 100 x (2/2 + 4/8 + 2/32)
    assertEquals(93.22, NoiseCriterion.OSHA.eightHourLevel(action), 0.005);
    assertEquals(966.61, niosh, 0.005);
    assertEquals(94.85, NoiseCriterion.NIOSH.eightHourLevel(niosh), 0.005);
  }

  /**
   * 29 CFR 1910.95(b) and (c): 84 dBA for 200 minutes, 95 for 100 and 92 for 90. By hand: against
   * the permissible limit 100 x (100/240 + 90/363.77) = 66.41; against the action level the 200
   * minutes at 84 dBA count too, over 1,102.8 allowed: 84.54.
   */
  @Test
  void the_label_of_a_limit_says_which_levels_count() {
    List<NoiseHours> day =
        List.of(
            new NoiseHours(84, 200 / 60.0),
            new NoiseHours(95, 100 / 60.0),
            new NoiseHours(92, 90 / 60.0));
    assertEquals(66.41, number(NoiseDose.of(NoiseCriterion.OSHA, day)), 0.005);
    assertEquals(84.54, number(NoiseDose.of(NoiseCriterion.OSHA_ACTION_LEVEL, day)), 0.005);
    assertEquals(100, NoiseCriterion.OSHA.guidance(), 0);
    assertEquals(50, NoiseCriterion.OSHA_ACTION_LEVEL.guidance(), 0);
  }

  /**
   * 29 CFR 1910.95(b), Table G-16, the whole hours it prints; a level under it is no part of it.
   */
  @ParameterizedTest
  @CsvSource({"90,8", "92,6", "95,4", "97,3", "100,2", "102,1.5", "105,1", "110,0.5", "115,0.25"})
  void the_printed_hours_of_table_g_16_are_near_one_dose(double dBA, double hours) {
    double dose = number(NoiseDose.of(NoiseCriterion.OSHA, List.of(new NoiseHours(dBA, hours))));
    assertEquals(100, dose, 2.0);
    assertEquals(0, number(NoiseDose.of(NoiseCriterion.OSHA, List.of(new NoiseHours(89.9, 8)))), 0);
  }

  @Test
  void levels_below_eighty_do_not_count_in_the_american_doses() {
    List<NoiseHours> quiet = List.of(new NoiseHours(79.9, 8));
    assertEquals(0, number(NoiseDose.of(NoiseCriterion.OSHA_ACTION_LEVEL, quiet)), 0);
    assertEquals(0, number(NoiseDose.of(NoiseCriterion.NIOSH, quiet)), 0);
  }

  /** HSE, noise exposure points for eight hours: 80 is 32, 85 is 100, 88 is 200, 90 is 315. */
  @ParameterizedTest
  @CsvSource({"80,32", "85,100", "88,200", "90,315"})
  void british_exposure_points_as_published(double dBA, double points) {
    double found =
        number(NoiseDose.percent(NoiseCriterion.BRITAIN, List.of(new NoiseHours(dBA, 8))));
    assertEquals(points, found, 0.015 * points);
  }

  /** Level of an energy mean: 8 h at one level is that level; half the time is 3 dB less. */
  @Test
  void the_european_level_is_the_energy_mean_over_eight_hours() {
    assertEquals(83, number(europe(new NoiseHours(83, 8))), 1e-9);
    assertEquals(83 - 3.0103, number(europe(new NoiseHours(83, 4))), 0.0001);
    // 10 log10((2 x 10^10 + 4 x 10^9 + 2 x 10^8) / 8) = 94.81, worked by hand.
    double level = 10 * Math.log10((2e10 + 4e9 + 2e8) / 8);
    assertEquals(level, number(NoiseDose.of(NoiseCriterion.EUROPE, MIXED_DAY)), 0.02);
  }

  @Test
  void a_country_gets_its_regulation_and_the_recommended_limit() {
    assertEquals(
        List.of(NoiseCriterion.OSHA, NoiseCriterion.OSHA_ACTION_LEVEL, NoiseCriterion.NIOSH),
        NoiseCriterion.forCountry("us"));
    assertEquals(
        List.of(NoiseCriterion.BRITAIN, NoiseCriterion.NIOSH), NoiseCriterion.forCountry("GB"));
    assertEquals(
        List.of(NoiseCriterion.EUROPE, NoiseCriterion.NIOSH), NoiseCriterion.forCountry("SE"));
    assertEquals(List.of(NoiseCriterion.NIOSH), NoiseCriterion.forCountry("AU"));
    assertEquals(List.of(NoiseCriterion.NIOSH), NoiseCriterion.forCountry(""));
  }

  @Test
  void a_level_above_what_the_rule_was_stated_for_is_said() {
    Score score = NoiseDose.of(NoiseCriterion.OSHA, List.of(new NoiseHours(131, 0.1)));
    assertTrue(score.number().isEmpty());
    assertEquals("131 dBA is not above 0 and up to 130", score.why().orElseThrow().english());
    assertTrue(NoiseDose.of(NoiseCriterion.NIOSH, List.of()).number().isEmpty());
  }

  private static Score europe(NoiseHours part) {
    return NoiseDose.of(NoiseCriterion.EUROPE, List.of(part));
  }

  private static double number(Score score) {
    return score.number().orElseThrow();
  }
}
