/**
 * The costs of a period, row by row, with the farrier's words mapped to the regime's lines.
 * Immutable and thread-safe. Start at {@link clenchbook.tax.expenses.Expenses}.
 */
@NullMarked
package clenchbook.tax.expenses;

import org.jspecify.annotations.NullMarked;
