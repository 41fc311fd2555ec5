package clenchbook.tax.lines;

/**
 * A line of the summary as the regime names it.
 *
 * @param line its number or word
 * @param name its name
 * @param source where number and name come from
 */
public record LineHead(String line, String name, String source) {}
