package clenchbook.comparison.pricing;

import java.math.BigDecimal;

/**
 * Somebody who is billed under the list.
 *
 * @param owner who
 * @param jobs how many of their jobs were charged less than the list asks, free ones not counted
 * @param by by how much in all, without tax
 */
public record UnderList(String owner, int jobs, BigDecimal by) {}
