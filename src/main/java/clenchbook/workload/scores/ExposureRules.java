package clenchbook.workload.scores;

import clenchbook.workload.methods.Method;
import clenchbook.workload.noise.NoiseCriterion;
import clenchbook.workload.vibration.HandArmVibration;
import java.util.List;

/**
 * The rules by which a country judges vibration and noise.
 *
 * @param vibration the method of hand-arm vibration, with the country's law
 * @param noise the criteria of noise, the country's own first
 */
public record ExposureRules(Method vibration, List<NoiseCriterion> noise) {

  /** Copies its list. */
  public ExposureRules {
    noise = List.copyOf(noise);
  }

  /**
   * The rules of a country.
   *
   * @param country two-letter code, any case; unknown or blank is allowed
   * @return its own regulations where they are carried, else what is recommended
   */
  public static ExposureRules forCountry(String country) {
    return new ExposureRules(HandArmVibration.method(country), NoiseCriterion.forCountry(country));
  }
}
