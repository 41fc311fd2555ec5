/**
 * Tax on sales and purchases by period, and turnover against the registration threshold. Immutable
 * and thread-safe. Start at {@link clenchbook.tax.sales.VatTable}.
 */
@NullMarked
package clenchbook.tax.sales;

import org.jspecify.annotations.NullMarked;
