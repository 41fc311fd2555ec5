package clenchbook.jobs;

import java.util.Locale;

/** How much of a job's time was measured. */
public enum Measured {
  /** A Total, or every part that the job needs. */
  YES,
  /** Some part that the job needs. */
  PART,
  /** None. */
  NO;

  /**
   * The word in files.
   *
   * @return {@code yes}, {@code part} or {@code no}
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
