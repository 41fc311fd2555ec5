package clenchbook.jobs;

import java.math.BigDecimal;

/**
 * Who pays for a job, and how much of it.
 *
 * @param name the name billed
 * @param sharePercent this payer's part in per cent, scaled so that all parts add to 100; 100 when
 *     alone
 */
public record Payer(String name, BigDecimal sharePercent) {
  /** The part of somebody who pays all. */
  public static final BigDecimal WHOLE = new BigDecimal(100);

  /**
   * Somebody who pays all.
   *
   * @param name the name billed
   * @return the payer
   */
  public static Payer ofAll(String name) {
    return new Payer(name, WHOLE);
  }
}
