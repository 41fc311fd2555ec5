package clenchbook.book.understood;

/** How the meaning of a column was found. */
public enum How {
  /** By the program's own name for it. */
  NAME("name"),
  /** By another word in use for it, in any of the languages. */
  KNOWN_WORD("known word"),
  /** By the farrier's own words: the sheet Headings or the file that stands for it. */
  HEADINGS("Headings"),
  /** Not at all. */
  NOT_READ("not read");

  private final String word;

  How(String word) {
    this.word = word;
  }

  /**
   * The word used in files.
   *
   * @return in English
   */
  public String word() {
    return word;
  }
}
