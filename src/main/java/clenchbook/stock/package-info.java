/**
 * What the van should hold, what it cost, what to buy and how to cut it.
 *
 * <p>May use {@code money}, {@code measure}, {@code problem}, {@code book}, {@code job}, {@code
 * report}; touches no file, clock or locale. Start reading at {@link clenchbook.stock.StockLedger},
 * the moving average that also prices every job.
 *
 * <p>Values are immutable and thread-safe. The two ledgers are not: each belongs to the one pass
 * over the book that feeds it.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.stock;
