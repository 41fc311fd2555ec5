package clenchbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One row of Trips.
 *
 * @param source the row it was read from
 * @param date the day driven
 * @param from start
 * @param to destination
 * @param typedDistance the Distance cell, in the book's distance unit
 * @param odometerStart reading at the start
 * @param odometerEnd reading at the end
 * @param driveMin minutes driven; empty counts as 0
 * @param purpose why; {@code private} never counts
 * @param vehicle which vehicle
 */
public record Trip(
    SourceRow source,
    LocalDate date,
    String from,
    String to,
    Optional<BigDecimal> typedDistance,
    Optional<BigDecimal> odometerStart,
    Optional<BigDecimal> odometerEnd,
    Optional<BigDecimal> driveMin,
    String purpose,
    String vehicle) {
  /**
   * How far the trip was.
   *
   * @return the Distance cell, else odometer end less start; empty when neither is there
   */
  public Optional<BigDecimal> distance() {
    return typedDistance.or(
        () -> odometerEnd.flatMap(end -> odometerStart.map(start -> end.subtract(start))));
  }

  /**
   * Whether the trip is business.
   *
   * @return false for Purpose {@code private}
   */
  public boolean business() {
    return !purpose.equalsIgnoreCase("private");
  }
}
