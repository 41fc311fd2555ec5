package clenchbook.workload.hours;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The limits and years that the farrier set; none is ours.
 *
 * @param weeklyHours hours in all a week
 * @param yearlyHours hours in all a year
 * @param horsesPerDay horse-visits a day
 * @param birthYear the farrier's year of birth
 * @param stopAge the age at which they mean to stop
 */
public record OwnLimits(
    OptionalDouble weeklyHours,
    OptionalDouble yearlyHours,
    OptionalDouble horsesPerDay,
    OptionalInt birthYear,
    OptionalInt stopAge) {

  private static final double ROUNDING = 1e-9;

  /** No limits at all. */
  public static final OwnLimits NONE =
      new OwnLimits(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalInt.empty(),
          OptionalInt.empty());

  /**
   * The limits of a book.
   *
   * @param settings its settings
   * @return a limit of 0 counts as not set
   */
  public static OwnLimits of(Settings settings) {
    return new OwnLimits(
        limit(settings, Setting.WEEKLY_HOURS_LIMIT),
        limit(settings, Setting.YEARLY_HOURS_LIMIT),
        limit(settings, Setting.HORSES_PER_DAY_LIMIT),
        whole(settings, Setting.BIRTH_YEAR),
        whole(settings, Setting.STOP_AGE));
  }

  /**
   * The calendar year at whose end the work stops.
   *
   * @return the year in which Stop age is reached; empty unless both years are set
   */
  public OptionalInt lastYear() {
    return birthYear.isPresent() && stopAge.isPresent()
        ? OptionalInt.of(birthYear.getAsInt() + stopAge.getAsInt())
        : OptionalInt.empty();
  }

  /** Whether a figure lies above a limit by more than adding up leaves of rounding. */
  public static boolean exceeds(double figure, double limit) {
    return figure - limit > ROUNDING;
  }

  private static OptionalDouble limit(Settings settings, Setting setting) {
    double number = settings.findNumber(setting).map(BigDecimal::doubleValue).orElse(0.0);
    return number > 0 ? OptionalDouble.of(number) : OptionalDouble.empty();
  }

  private static OptionalInt whole(Settings settings, Setting setting) {
    return settings
        .findNumber(setting)
        .map(number -> OptionalInt.of(number.intValue()))
        .orElseGet(OptionalInt::empty);
  }
}
