/**
 * Estimates of a difference between two sides, with honest uncertainty, and nothing about any
 * trade: samples, strata, groups of related observations, proportions, least squares.
 *
 * <p>All types are immutable and thread-safe; nothing here reads a clock, a file or a locale, and
 * random draws start from a seed that the caller gives. Values are {@code double}; none is money.
 * Start reading at {@link clenchbook.comparison.statistics.StratifiedDifference}.
 */
package clenchbook.comparison.statistics;
