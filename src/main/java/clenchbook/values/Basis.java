package clenchbook.values;

/** What a figure rests on. */
public enum Basis {
  /** The farrier measured or paid it. */
  MEASURED,
  /** The standard of the Work sheet or a list price. */
  STANDARD,
  /** A default of the program. */
  DEFAULT;

  /**
   * The weaker of two bases; a sum rests on its weakest part.
   *
   * @param other another basis
   * @return the one further from measured
   */
  public Basis weaker(Basis other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
