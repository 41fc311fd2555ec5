package clenchbook.workload.noise;

import clenchbook.workload.hours.Digits;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Score;
import java.util.List;
import java.util.Optional;

/** The noise of a day under one criterion. */
public final class NoiseDose {

  private NoiseDose() {}

  /**
   * One task's share of the day.
   *
   * @param dBA its A-weighted level
   * @param hours spent at it
   */
  public record NoiseHours(double dBA, double hours) {}

  /**
   * The dose: the sum of the hours at each level over the hours allowed at it.
   *
   * @param criterion whose rule
   * @param day the noisy tasks, in any order
   * @return per cent, not rounded, or which input lies outside the range
   */
  public static Score percent(NoiseCriterion criterion, List<NoiseHours> day) {
    return faultIn(criterion, day)
        .<Score>map(Score.OutOfRange::new)
        .orElseGet(() -> Score.of(100 * share(criterion, day)));
  }

  private static double share(NoiseCriterion criterion, List<NoiseHours> day) {
    return day.stream()
        .filter(part -> criterion.counts(part.dBA()))
        .mapToDouble(part -> part.hours() / criterion.allowedHours(part.dBA()))
        .sum();
  }

  /**
   * The day's figure in the criterion's own unit: the dose, or the European eight-hour level.
   *
   * @param criterion whose rule
   * @param day the noisy tasks, in any order
   * @return in {@link NoiseCriterion#unit()}, not rounded, or which input lies outside the range
   */
  public static Score of(NoiseCriterion criterion, List<NoiseHours> day) {
    Score percent = percent(criterion, day);
    return criterion.isLevel() ? percent.map(criterion::eightHourLevel) : percent;
  }

  private static Optional<Phrase> faultIn(NoiseCriterion criterion, List<NoiseHours> day) {
    double hours = 0;
    for (NoiseHours part : day) {
      if (part.dBA() <= 0 || criterion.tooLoud(part.dBA())) {
        return Optional.of(
            Phrase.of(
                Digits.plain(part.dBA())
                    + " dBA is not above 0 and up to "
                    + Digits.plain(criterion.ceiling()),
                "workload.fault.noise",
                Digits.rounded(part.dBA(), 2),
                Digits.rounded(criterion.ceiling(), 2)));
      }
      hours += part.hours();
    }
    return hours > 0 && hours <= 24
        ? Optional.empty()
        : Optional.of(
            Phrase.of(
                Digits.plain(hours) + " hours of noise in one day",
                "workload.fault.noiseHours",
                Digits.rounded(hours, 2)));
  }
}
