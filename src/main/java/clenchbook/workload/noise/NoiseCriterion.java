package clenchbook.workload.noise;

import clenchbook.workload.methods.Method;
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
          "noise dose, OSHA",
          "29 CFR 1910.95(b), Table G-16 (in force since 1983)",
          "90 to 130 dBA; periods below 90 do not count toward this limit; 0 to 24 hours",
          "peaks, hearing protection worn, noise outside work; the levels are the farrier's own"),
      90,
      5,
      16.61,
      90,
      130,
      100,
      "permissible exposure limit; levels of 90 dBA and more"),

  /**
   * The action level of the United States: an eight-hour average of 85 dBA, which is half a dose;
   * for it all levels from 80 to 130 dBA count (29 CFR 1910.95(c) and Appendix I).
   */
  OSHA_ACTION_LEVEL(
      new Method(
          "noise dose, OSHA action level",
          "29 CFR 1910.95(c) and Appendix I (in force since 1983)",
          "80 to 130 dBA; periods below 80 do not count; 0 to 24 hours",
          "peaks, hearing protection worn, noise outside work; the levels are the farrier's own"),
      90,
      5,
      16.61,
      80,
      130,
      50,
      "action level; levels of 80 dBA and more"),

  /** The recommended limit: 85 dBA for 8 hours, 3 dB halves the time. */
  NIOSH(
      new Method(
          "noise dose, NIOSH",
          "NIOSH publication 98-126, 1998",
          "80 to 140 dBA; quieter periods do not count; 0 to 24 hours",
          "peaks, hearing protection worn, noise outside work; the levels are the farrier's own"),
      85,
      3,
      10,
      80,
      140,
      100,
      "recommended exposure limit"),

  /** The daily level of Great Britain's own regulations; the same numbers as the directive's. */
  BRITAIN(
      new Method(
          "noise exposure Lex,8h",
          "Control of Noise at Work Regulations 2005 (SI 2005/1643), regulation 4; level as in ISO"
              + " 9612:2009",
          "up to 140 dBA; above 0 to 24 hours",
          "peak pressure, hearing protection worn, noise outside work; the levels are the farrier's"
              + " own"),
      85,
      10 * Math.log10(2),
      10,
      0,
      140,
      85,
      "upper exposure action value; lower 80, limit 87 dB(A)"),

  /** The European daily level Lex,8h, under whatever law a country carries the directive out. */
  EUROPE(
      new Method(
          "noise exposure Lex,8h",
          "the country's law under Directive 2003/10/EC, article 3 (from memory); level as in ISO"
              + " 9612:2009",
          "up to 140 dBA; above 0 to 24 hours",
          "peak pressure, hearing protection worn, noise outside work; the levels are the farrier's"
              + " own"),
      85,
      10 * Math.log10(2),
      10,
      0,
      140,
      85,
      "upper action value; lower action value 80, limit 87 dB(A) (from memory)");

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
  private final String guidanceName;

  NoiseCriterion(
      Method method,
      double criterionLevel,
      double exchangeRate,
      double levelFactor,
      double threshold,
      double ceiling,
      double guidance,
      String guidanceName) {
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
  public String unit() {
    return isLevel() ? "dB(A)" : "%";
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
  public String guidanceName() {
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
