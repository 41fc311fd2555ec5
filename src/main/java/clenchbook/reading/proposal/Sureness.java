package clenchbook.reading.proposal;

/**
 * Turns points into per cent: what the margin to the second best says, and how far some kinds of
 * evidence can be trusted at all. Set by books whose headings were renamed at random;
 * docs/own-words.md prints how right it is on others.
 */
final class Sureness {
  /** The most that is ever said. */
  static final int MOST = 99;

  private static final int[] MARGINS = {0, 7, 14, 22, 33, 46, 60, 100};
  private static final int[] PER_CENT = {42, 60, 73, 83, 89, 94, 97, 99};

  private Sureness() {}

  /** The per cent for a margin in points. */
  static int of(int margin) {
    if (margin <= 0) {
      return PER_CENT[0];
    }
    for (int i = 1; i < MARGINS.length; i++) {
      if (margin <= MARGINS[i]) {
        int share = (margin - MARGINS[i - 1]) * (PER_CENT[i] - PER_CENT[i - 1]);
        return PER_CENT[i - 1] + share / (MARGINS[i] - MARGINS[i - 1]);
      }
    }
    return MOST;
  }
}
