package clenchbook.matching.evidence;

/** How a text names an invoice, the surest first. */
public enum NumberHow {
  /** By its reference with check digits (ISO 11649). */
  REFERENCE("the reference"),
  /** By its number. */
  EXACT("the number"),
  /** By its number without leading noughts, or where it could be a day. */
  LOOSE("the number, written shorter,"),
  /** By a number so short that it could be another. */
  SHORT("a short number"),
  /** By its number with one slip. */
  SLIP("the number with one slip");

  private final String words;

  NumberHow(String words) {
    this.words = words;
  }

  /**
   * How a sentence calls it.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }

  /**
   * Whether it leaves no doubt which number was meant.
   *
   * @return true for the number itself and its reference
   */
  public boolean plain() {
    return this == REFERENCE || this == EXACT;
  }
}
