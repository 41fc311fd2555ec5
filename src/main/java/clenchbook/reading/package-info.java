/**
 * From a farrier's file to {@link clenchbook.book.Book}: which sheet and column means what, how
 * each cell is read, and a problem for every cell that can't be. The farrier's workbook is opened
 * for reading only and never written. Start at {@link clenchbook.reading.BookReader}.
 */
@NullMarked
package clenchbook.reading;

import org.jspecify.annotations.NullMarked;
