/**
 * What is used in a week, what is left, and what to order. Immutable and thread-safe. Start at
 * {@link clenchbook.stock.orders.OrderRule}.
 */
@NullMarked
package clenchbook.stock.orders;

import org.jspecify.annotations.NullMarked;
