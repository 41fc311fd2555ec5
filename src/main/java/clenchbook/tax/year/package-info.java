/**
 * A regime's tax year, its basis, and everything a year's end is made from. Immutable and
 * thread-safe. Start at {@link clenchbook.tax.year.YearEndInput}.
 */
@NullMarked
package clenchbook.tax.year;

import org.jspecify.annotations.NullMarked;
