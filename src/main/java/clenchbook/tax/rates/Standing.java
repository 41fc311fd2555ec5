package clenchbook.tax.rates;

/** How far a row of a rate table was compared with its source. */
public enum Standing {
  /** The text of an official page, law or form was read. */
  VERIFIED("verified", ""),
  /** A secondary page quotes the official figure. */
  REPORTED("reported", ""),
  /** A word of the trade and the heading it leads to: nobody's rule, open to change. */
  PRACTICE("common practice", ""),
  /** Read for an earlier year and taken to hold on; the later year's form or page was not seen. */
  CARRIED_OVER("carried over", "carried over from the last year seen"),
  /** Written down without a source. */
  MEMORY("from memory", "from memory");

  private final String word;
  private final String mark;

  Standing(String word, String mark) {
    this.word = word;
    this.mark = mark;
  }

  /** The standing that a row's source tells. */
  public static Standing of(String source) {
    if (source.contains("from memory")) {
      return MEMORY;
    }
    if (source.contains("carried over")) {
      return CARRIED_OVER;
    }
    if (source.contains("common practice")) {
      return PRACTICE;
    }
    return source.contains("(as reported") ? REPORTED : VERIFIED;
  }

  /** What the tables' own page calls it. */
  public String word() {
    return word;
  }

  /** What stands beside a figure that rests on such a row; blank where nothing need be said. */
  public String mark() {
    return mark;
  }
}
