package clenchbook.jobs;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The minutes of a job, before any share of setting the forge up.
 *
 * @param trim trimming
 * @param shape shaping all shoes
 * @param nail nailing and clenching
 * @param grind grinding
 * @param total first foot to last clench, as measured; replaces the sum of the four
 * @param forge burning time of the forge; never work
 * @param helper somebody else's minutes; zero when none
 * @param making minutes making this job's new handmade shoes, from Materials
 * @param makingForge minutes of forge for making them
 * @param measured how much was measured
 */
public record JobMinutes(
    Timed trim,
    Timed shape,
    Timed nail,
    Timed grind,
    Optional<BigDecimal> total,
    Timed forge,
    BigDecimal helper,
    BigDecimal making,
    BigDecimal makingForge,
    Measured measured) {

  /**
   * Work on this horse: the total, else the four parts added.
   *
   * @return minutes, exact
   */
  public BigDecimal work() {
    return total.orElseGet(this::partsAdded);
  }

  /**
   * The four parts added, whatever the total says.
   *
   * @return minutes, exact
   */
  public BigDecimal partsAdded() {
    return trim.minutes().add(shape.minutes()).add(nail.minutes()).add(grind.minutes());
  }
}
