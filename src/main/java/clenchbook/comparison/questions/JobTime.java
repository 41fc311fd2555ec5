package clenchbook.comparison.questions;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The minutes of one job, exact and never negative.
 *
 * @param ownShape the Shape min that the visit's own row gives; empty where it gives none
 * @param measured whether all of the job's time was measured
 * @param job from first foot to last clench, with the job's share of setting up the forge
 * @param drive its share of the driving
 * @param making making its new handmade shoes
 * @param helper somebody else's minutes on this horse
 * @param forge minutes the forge burned for this job, without setting it up; 0 for a cold one
 */
public record JobTime(
    Optional<BigDecimal> ownShape,
    boolean measured,
    BigDecimal job,
    BigDecimal drive,
    BigDecimal making,
    BigDecimal helper,
    BigDecimal forge) {

  /** Minutes in a day; more on one job are a slip of the pen. */
  public static final BigDecimal A_DAY = BigDecimal.valueOf(1440);

  /** Job, drive and making minutes added: the time that the job's earnings are set against. */
  public BigDecimal all() {
    return job.add(drive).add(making);
  }
}
