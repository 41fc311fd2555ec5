/**
 * Rates, limits, line numbers and dates that a tax regime sets, by jurisdiction and by day, each
 * with its source.
 *
 * <p>Nothing here is a literal in code: the figures come from data files that {@code
 * clenchbook.ratefiles} reads. A lookup gives the value together with where it comes from, or
 * nothing at all for a day no row covers; it never falls back on the year before. All types are
 * immutable and thread-safe. Uses nothing but the JDK. Start with {@link
 * clenchbook.rates.RateTables}.
 */
package clenchbook.rates;
