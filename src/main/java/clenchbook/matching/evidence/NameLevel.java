package clenchbook.matching.evidence;

/** How well a payer's name speaks for an owner, the best first. */
public enum NameLevel {
  /** All words of the owner's name, and no others. */
  FULL(400, "the owner's name"),
  /** A name that paid for this owner before. */
  BEFORE(300, "a name that paid for this owner before"),
  /** All words of one name stand in the other. */
  COVERED(250, "the owner's name among other words"),
  /** One letter wrong. */
  SLIP(80, "the owner's name with one slip"),
  /** The owner's name in what the payer wrote. */
  IN_TEXT(80, "the owner's name in the text"),
  /** A name or account that pays for this owner elsewhere in these statements. */
  ELSEWHERE(60, "a payer who pays for this owner elsewhere in these statements"),
  /** The last name and an initial. */
  INITIAL(60, "the owner's last name and initial"),
  /** One word that only this owner has. */
  ONE_WORD(12, "one word of the owner's name"),
  /** A name of nobody in the book. */
  UNKNOWN(0.3, "an unknown name"),
  /** No name at all. */
  NONE(1, "no name");

  private final double likelihood;
  private final String words;

  NameLevel(double likelihood, String words) {
    this.likelihood = likelihood;
    this.words = words;
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
   * @return a few words
   */
  public String words() {
    return words;
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
