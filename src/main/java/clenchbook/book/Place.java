package clenchbook.book;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One row of Places.
 *
 * @param source the row it was read from
 * @param name the place's name
 * @param address its address
 * @param distance one way from home, in the book's distance unit
 * @param driveMin minutes one way from home
 */
public record Place(
    SourceRow source,
    String name,
    String address,
    Optional<BigDecimal> distance,
    Optional<BigDecimal> driveMin) {}
