package clenchbook.book;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One row of Strain: the farrier's own rating of a task.
 *
 * @param source the row it was read from
 * @param task the task
 * @param effortCr10 effort on Borg's CR-10 scale
 * @param effortsPerMin efforts a minute
 * @param secondsPerEffort seconds an effort
 * @param wristDegrees wrist angle, degrees
 * @param wristDirection flexion or extension
 * @param vibration hand-arm vibration, m/s2
 * @param noiseDba noise, dBA
 * @param trunkDegrees trunk angle, degrees
 * @param longestHoldSeconds longest hold, seconds
 * @param blowsPerShoe hammer blows per shoe
 */
public record StrainRating(
    SourceRow source,
    Task task,
    Optional<BigDecimal> effortCr10,
    Optional<BigDecimal> effortsPerMin,
    Optional<BigDecimal> secondsPerEffort,
    Optional<BigDecimal> wristDegrees,
    String wristDirection,
    Optional<BigDecimal> vibration,
    Optional<BigDecimal> noiseDba,
    Optional<BigDecimal> trunkDegrees,
    Optional<BigDecimal> longestHoldSeconds,
    Optional<BigDecimal> blowsPerShoe) {}
