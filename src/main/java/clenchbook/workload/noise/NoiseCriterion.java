package clenchbook.workload.noise;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Phrase;
import clenchbook.workload.methods.Method;
import clenchbook.workload.methods.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The rules by which a day's noise is judged. */
public enum NoiseCriterion {

  /**
   * The permissible limit of the United States: 90 dBA for 8 hours, 5 dB halves the time. Its table
   * begins at 90 dBA, so quieter periods are no part of it (29 CFR 1910.95(b), Table G-16).
   */
  OSHA(
      new Method(
          Phrase.of("noise dose, OSHA", "workload.noise.osha"),
          Message.of("workload.noise.oshaSource"),
          Message.of("workload.noise.oshaRange"),
          Message.of("workload.noise.notCovered")),
      90,
      5,
      16.61,
      90,
      130,
      100,
      Phrase.of(
          "permissible exposure limit; levels of 90 dBA and more", "workload.noise.oshaLimit")),

  /**
   * The action level of the United States: an eight-hour average of 85 dBA, which is half a dose;
   * for it all levels from 80 to 130 dBA count (29 CFR 1910.95(c) and Appendix I).
   */
  OSHA_ACTION_LEVEL(
      new Method(
          Phrase.of("noise dose, OSHA action level", "workload.noise.oshaAction"),
          Message.of("workload.noise.oshaActionSource"),
          Message.of("workload.noise.oshaActionRange"),
          Message.of("workload.noise.notCovered")),
      90,
      5,
      16.61,
      80,
      130,
      50,
      Phrase.of("action level; levels of 80 dBA and more", "workload.noise.oshaActionLimit")),

  /** The recommended limit: 85 dBA for 8 hours, 3 dB halves the time. */
  NIOSH(
      new Method(
          Phrase.of("noise dose, NIOSH", "workload.noise.niosh"),
          Message.of("workload.noise.nioshSource"),
          Message.of("workload.noise.nioshRange"),
          Message.of("workload.noise.notCovered")),
      85,
      3,
      10,
      80,
      140,
      100,
      Phrase.of("recommended exposure limit", "workload.noise.nioshLimit")),

  /** The daily level of Great Britain's own regulations; the same numbers as the directive's. */
  BRITAIN(
      new Method(
          Phrase.of("noise exposure Lex,8h", "workload.noise.level"),
          Message.of("workload.noise.levelSourceBritain"),
          Message.of("workload.noise.levelRange"),
          Message.of("workload.noise.levelNotCovered")),
      85,
      10 * Math.log10(2),
      10,
      0,
      140,
      85,
      Phrase.of(
          "upper exposure action value; lower 80, limit 87 dB(A)",
          "workload.noise.levelLimitBritain")),

  /** The European daily level Lex,8h, under whatever law a country carries the directive out. */
  EUROPE(
      new Method(
          Phrase.of("noise exposure Lex,8h", "workload.noise.level"),
          Message.of("workload.noise.levelSourceEurope"),
          Message.of("workload.noise.levelRange"),
          Message.of("workload.noise.levelNotCovered")),
      85,
      10 * Math.log10(2),
      10,
      0,
      140,
      85,
      Phrase.of(
          "upper action value; lower action value 80, limit 87 dB(A) (from memory)",
          "workload.noise.levelLimitEurope"));

  private static final Set<String> UNDER_THE_DIRECTIVE =
      Set.of(
          "AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GR", "HR", "HU", "IE",
          "IS", "IT", "LI", "LT", "LU", "LV", "MT", "NL", "NO", "PL", "PT", "RO", "SE", "SI", "SK");

  private final Method method;
  private final double criterionLevel;
  private final double exchangeRate;
  private final double levelFactor;
  private final double threshold;
  private final double ceiling;
  private final double guidance;
  private final Phrase guidanceName;

  NoiseCriterion(
      Method method,
      double criterionLevel,
      double exchangeRate,
      double levelFactor,
      double threshold,
      double ceiling,
      double guidance,
      Phrase guidanceName) {
    this.method = method;
    this.criterionLevel = criterionLevel;
    this.exchangeRate = exchangeRate;
    this.levelFactor = levelFactor;
    this.threshold = threshold;
    this.ceiling = ceiling;
    this.guidance = guidance;
    this.guidanceName = guidanceName;
  }

  /**
   * The criteria for a country: its regulation where one is carried here, then the recommended one.
   *
   * @param country two-letter code, any case; unknown or blank is allowed
   * @return the regulation first; only the recommended one where no regulation is carried
   */
  public static List<NoiseCriterion> forCountry(String country) {
    String code = country.trim().toUpperCase(Locale.ROOT);
    if (code.equals("US")) {
      return List.of(OSHA, OSHA_ACTION_LEVEL, NIOSH);
    }
    if (code.equals("GB")) {
      return List.of(BRITAIN, NIOSH);
    }
    return UNDER_THE_DIRECTIVE.contains(code) ? List.of(EUROPE, NIOSH) : List.of(NIOSH);
  }

  /**
   * What the criterion is and what it leaves out.
   *
   * @return the method
   */
  public Method method() {
    return method;
  }

  /**
   * The unit of its score: per cent of the allowed dose, or decibels for a daily level.
   *
   * @return the unit
   */
  public Unit unit() {
    return isLevel() ? Unit.DECIBELS : Unit.PERCENT;
  }

  /**
   * The published value that the score is set against.
   *
   * @return in {@link #unit()}
   */
  public double guidance() {
    return guidance;
  }

  /**
   * What the published value is called.
   *
   * @return a few words
   */
  public Phrase guidanceName() {
    return guidanceName;
  }

  /**
   * How long a level may last when it is the day's only noise.
   *
   * @param dBA the level
   * @return hours, not rounded
   */
  public double allowedHours(double dBA) {
    return 8 / Math.pow(2, (dBA - criterionLevel) / exchangeRate);
  }

  /**
   * The eight-hour level that gives the same dose, with the factor that each rule prints: 16.61,
   * 10.
   *
   * @param dosePercent above 0
   * @return dBA, not rounded
   */
  public double eightHourLevel(double dosePercent) {
    return criterionLevel + levelFactor * Math.log10(dosePercent / 100);
  }

  /** Whether its score is an eight-hour level rather than a share of a dose. */
  boolean isLevel() {
    return this == EUROPE || this == BRITAIN;
  }

  /** Whether a level counts at all. */
  boolean counts(double dBA) {
    return dBA >= threshold;
  }

  /** Whether a level lies above what the rule was stated for. */
  boolean tooLoud(double dBA) {
    return dBA > ceiling;
  }

  /** The loudest level that the rule was stated for, dBA. */
  double ceiling() {
    return ceiling;
  }
}
