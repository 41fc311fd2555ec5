/**
 * From a farrier's file to {@code clenchbook.book}: which sheet and column means what, how each
 * cell is read, and a problem for every cell that can't be. Start at {@link
 * clenchbook.workbook.BookReader}; files themselves are opened by {@code
 * clenchbook.workbook.table}.
 *
 * <p>The farrier's workbook is opened for reading only and never written. May use the core packages
 * and spreadsheet libraries; no other shell package.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.workbook;
