package clenchbook.workload.hours;

import java.time.LocalDate;

/**
 * One day's work.
 *
 * @param date the day
 * @param load what was done on it
 */
public record WorkDay(LocalDate date, Load load) {

  /**
   * Whether a horse or a fee was attended to; a day of driving only is no day worked.
   *
   * @return true with at least one visit that was not cancelled
   */
  public boolean worked() {
    return load.daysWorked() > 0;
  }
}
