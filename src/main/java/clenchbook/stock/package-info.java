/**
 * What the van should hold, what it cost, what to buy and how to cut it, as tables, pages and
 * warnings. Start at {@link clenchbook.stock.Stock}.
 */
@NullMarked
package clenchbook.stock;

import org.jspecify.annotations.NullMarked;
