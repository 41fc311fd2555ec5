package clenchbook.backup;

/** What a file is to its book; a backup holds them in this order. */
public enum Role {
  BOOK("book"),
  REGISTER("register"),
  HEADINGS("headings"),
  TEMPLATES("templates"),
  RATES("rates"),
  LOGO("logo"),
  /** The rows that {@code payments} laid out to be pasted: the month's page counts them. */
  WAITING("payments to paste");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** What the farrier calls it. */
  public String word() {
    return word;
  }
}
