package clenchbook.values;

import java.time.LocalDate;

/**
 * A stretch of days, both ends inclusive.
 *
 * @param first the first day
 * @param last the last day
 */
public record Period(LocalDate first, LocalDate last) {
  /** Refuses an end before the beginning. */
  public Period {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException(first + " to " + last);
    }
  }

  /** Whether the day lies within, ends included. */
  public boolean holds(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  /** The two days as {@code 2025-04-06 to 2026-04-05}. */
  public String text() {
    return first + " to " + last;
  }
}
