/**
 * Tax on sales and purchases: by rate, and the sums of a return's period. Which boxes they fill is
 * their country's matter. Immutable and thread-safe. Start at {@link
 * clenchbook.tax.sales.VatPeriod}.
 */
@NullMarked
package clenchbook.tax.sales;

import org.jspecify.annotations.NullMarked;
