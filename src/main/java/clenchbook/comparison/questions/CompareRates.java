package clenchbook.comparison.questions;

import clenchbook.reports.blocks.FigureText;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * The settings that comparisons, break-even and prices rest on.
 *
 * @param currency the book's currency, ISO 4217
 * @param text how figures are written for people
 * @param minor its minor unit
 * @param wage the farrier's hour; empty where not given
 * @param helperWage a helper's hour; empty where not given
 * @param gasPerMinute the cost of a minute of burning, exact; empty where no gas cost is given
 * @param setupMinutes minutes to set the forge up at a stop
 * @param setupGasMinutes minutes of gas to heat it at a stop
 * @param setupGiven whether both were given rather than the program's defaults
 * @param callbackDays days in which a free or lost-shoe visit is a callback
 * @param targetMargin the margin after labour a Work should leave, 0 to below 1; empty where not
 *     given
 */
public record CompareRates(
    String currency,
    FigureText text,
    MinorUnit minor,
    Optional<BigDecimal> wage,
    Optional<BigDecimal> helperWage,
    Optional<BigDecimal> gasPerMinute,
    BigDecimal setupMinutes,
    BigDecimal setupGasMinutes,
    boolean setupGiven,
    int callbackDays,
    Optional<BigDecimal> targetMargin) {

  static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

  /** The wages of job, making and helper minutes, rounded half up to the minor unit. */
  BigDecimal labourOnTheSpot(JobTime time) {
    BigDecimal own = time.job().add(time.making()).multiply(wage.orElse(BigDecimal.ZERO));
    BigDecimal helper = time.helper().multiply(helperWage.orElse(BigDecimal.ZERO));
    return own.add(helper).divide(MINUTES_PER_HOUR, minor.digits(), RoundingMode.HALF_UP);
  }

  /** The farrier's wage a minute; 0 where not given. */
  public double wagePerMinute() {
    return wage.orElse(BigDecimal.ZERO)
        .divide(MINUTES_PER_HOUR, MathContext.DECIMAL64)
        .doubleValue();
  }

  /** The cost of burning for these minutes; 0 where no gas cost is given. */
  public double gas(BigDecimal minutes) {
    return gasPerMinute.orElse(BigDecimal.ZERO).multiply(minutes).doubleValue();
  }
}
