/**
 * The income of a period, row by row, and how much of each receipt is tax. Immutable and
 * thread-safe. Start at {@link clenchbook.tax.income.Income}.
 */
@NullMarked
package clenchbook.tax.income;

import org.jspecify.annotations.NullMarked;
