package clenchbook.matching.evidence;

import clenchbook.texts.Message;

/** How a text names an invoice, the surest first. */
public enum NumberHow {
  /** By its reference with check digits (ISO 11649). */
  REFERENCE("matching.number.reference"),
  /** By its number. */
  EXACT("matching.number.exact"),
  /** By its number without leading noughts, or where it could be a day. */
  LOOSE("matching.number.loose"),
  /** By a number so short that it could be another. */
  SHORT("matching.number.short"),
  /** By its number with one slip. */
  SLIP("matching.number.slip");

  private final String key;

  NumberHow(String key) {
    this.key = key;
  }

  /**
   * How a sentence calls it.
   *
   * @param numbers the numbers that the text names so
   */
  public Message of(String numbers) {
    return Message.of(key, numbers);
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
