package clenchbook.tax.lines;

import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Standing;
import clenchbook.texts.Message;

/**
 * A line of the summary as the regime names it.
 *
 * @param number its number or word, in files and on pages
 * @param named its name, in files and on pages
 * @param source where number and name come from
 */
public record LineHead(Wording number, Wording named, String source) {

  /** A line whose number and name are the same in every language, as a form has them. */
  public LineHead(String line, String name, String source) {
    this(Wording.literal(line), Wording.literal(name), source);
  }

  /** A line of the program's own: known in files by some words, on pages by its name. */
  public LineHead(String line, Wording named, String source) {
    this(Wording.literal(line), named, source);
  }

  /**
   * A line that no form numbers: known in files by a word, on pages by its name alone.
   *
   * @param word the word of files
   * @param named its name
   * @param source where it comes from
   * @return the line
   */
  public static LineHead unnumbered(String word, Wording named, String source) {
    return new LineHead(new Wording(word, Message.NONE), named, source);
  }

  /** Whether pages have nothing to say of it but its name. */
  public boolean isUnnumbered() {
    return number.said().isEmpty();
  }

  /** Its number or word, as files have it. */
  public String line() {
    return number.file();
  }

  /** Its name, as files have it. */
  public String name() {
    return named.file();
  }

  /** The same line with other sources. */
  public LineHead from(String sources) {
    return new LineHead(number, named, sources);
  }

  /** The same line under another number, such as that of a quarter's return. */
  public LineHead under(String line) {
    return new LineHead(Wording.literal(line), named, source);
  }

  /**
   * What must stand beside a figure on this line: that its number or a rate in it was written from
   * memory, or carried over from an earlier year; nothing where neither is so.
   */
  public Message mark() {
    return Standing.of(source).mark();
  }
}
