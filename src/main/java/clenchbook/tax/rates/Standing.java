package clenchbook.tax.rates;

import clenchbook.texts.Message;

/** How far a row of a rate table was compared with its source. */
public enum Standing {
  /** The text of an official page, law or form was read. */
  VERIFIED("verified", Message.NONE),
  /** A secondary page quotes the official figure. */
  REPORTED("reported", Message.NONE),
  /** A word of the trade and the heading it leads to: nobody's rule, open to change. */
  PRACTICE("common practice", Message.NONE),
  /** Read for an earlier year and taken to hold on; the later year's form or page was not seen. */
  CARRIED_OVER("carried over", Message.of("tax.standing.carriedOver")),
  /** Written down without a source. */
  MEMORY("from memory", Message.of("tax.standing.memory"));

  private final String word;
  private final Message mark;

  Standing(String word, Message mark) {
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

  /** What stands beside a figure that rests on such a row; nothing where nothing need be said. */
  public Message mark() {
    return mark;
  }
}
