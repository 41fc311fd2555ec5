/**
 * Rates, limits, line numbers and dates that a tax regime sets, by jurisdiction and by day, each
 * with its source. Nothing here is a literal in code: the figures come from data files. A look-up
 * gives the value together with where it comes from, or nothing at all for a day no row covers; it
 * never falls back on the year before. Start at {@link clenchbook.tax.rates.RateTables}.
 */
@NullMarked
package clenchbook.tax.rates;

import org.jspecify.annotations.NullMarked;
