package clenchbook.comparison.questions;

import clenchbook.statistics.Interval;
import java.util.Optional;

/** What a comparison shows. */
public enum Verdict {
  /** Side A is lower, beyond doubt at 95 %. */
  A_LOWER("a lower"),
  /** Side A is higher, beyond doubt at 95 %. */
  A_HIGHER("a higher"),
  /** The interval holds 0, or there is none. */
  NO_DIFFERENCE_SHOWN("no difference shown"),
  /** A side has too few jobs. */
  NOT_ENOUGH_JOBS("not enough jobs");

  /** A side needs at least this many for a verdict. */
  public static final int FEWEST = 5;

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** The verdict from both counts and the wider interval. */
  public static Verdict of(double countA, double countB, Optional<Interval> wider) {
    if (countA < FEWEST || countB < FEWEST) {
      return NOT_ENOUGH_JOBS;
    }
    if (wider.isEmpty() || wider.get().holds(0)) {
      return NO_DIFFERENCE_SHOWN;
    }
    return wider.get().high() < 0 ? A_LOWER : A_HIGHER;
  }

  /** The verdict's word in files. */
  public String word() {
    return word;
  }
}
