package clenchbook.tax.lines;

import clenchbook.tax.rates.Standing;

/**
 * A line of the summary as the regime names it.
 *
 * @param line its number or word
 * @param name its name
 * @param source where number and name come from
 */
public record LineHead(String line, String name, String source) {
  /**
   * What must stand beside a figure on this line: that its number or a rate in it was written from
   * memory, or carried over from an earlier year; blank where neither is so.
   */
  public String mark() {
    return Standing.of(source).mark();
  }
}
