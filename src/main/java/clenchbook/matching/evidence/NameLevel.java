package clenchbook.matching.evidence;

import clenchbook.texts.Message;

/** How well a payer's name speaks for an owner, the best first. */
public enum NameLevel {
  /** All words of the owner's name, and no others. */
  FULL(400, "matching.name.full"),
  /** A name that paid for this owner before. */
  BEFORE(300, "matching.name.before"),
  /** All words of one name stand in the other. */
  COVERED(250, "matching.name.covered"),
  /** One letter wrong. */
  SLIP(80, "matching.name.slip"),
  /** The owner's name in what the payer wrote. */
  IN_TEXT(80, "matching.name.inText"),
  /** A name or account that pays for this owner elsewhere in these statements. */
  ELSEWHERE(60, "matching.name.elsewhere"),
  /** The last name and an initial. */
  INITIAL(60, "matching.name.initial"),
  /** One word that only this owner has. */
  ONE_WORD(12, "matching.name.oneWord"),
  /** A name of nobody in the book. */
  UNKNOWN(0.3, "matching.name.unknown"),
  /** No name at all. */
  NONE(1, "");

  private final double likelihood;
  private final String key;

  NameLevel(double likelihood, String key) {
    this.likelihood = likelihood;
    this.key = key;
  }

  /**
   * How much likelier this is where the owner pays than where other money comes in.
   *
   * @return above 1 where it speaks for the owner
   */
  public double likelihood() {
    return likelihood;
  }

  /**
   * How a sentence calls it.
   *
   * @param owner the owner for whom it speaks
   * @return nothing to say where there is no name
   */
  public Message of(String owner) {
    return switch (this) {
      case NONE -> Message.NONE;
      case UNKNOWN -> Message.of(key);
      default -> Message.of(key, owner);
    };
  }

  /**
   * Whether it is the owner's own name, or one that Payments know.
   *
   * @return false for a payer seen only in these statements
   */
  public boolean identifies() {
    return named() && this != ELSEWHERE;
  }

  /**
   * Whether it names the owner as a whole.
   *
   * @return false for one word, an unknown name and none
   */
  public boolean named() {
    return compareTo(INITIAL) <= 0;
  }
}
