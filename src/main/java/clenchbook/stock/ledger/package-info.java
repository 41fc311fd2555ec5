/**
 * What came in, what was used and what was counted, in the order of days, and the moving average
 * that also prices every job. Values are immutable; the two ledgers belong to the one pass over the
 * book that feeds them. Start at {@link clenchbook.stock.ledger.StockLedger}.
 */
@NullMarked
package clenchbook.stock.ledger;

import org.jspecify.annotations.NullMarked;
