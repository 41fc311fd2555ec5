/**
 * From the cells of a row to a record of the book; every row is used, held or ignored, and counted.
 * Start at {@link clenchbook.reading.rows.BookDraft}.
 */
@NullMarked
package clenchbook.reading.rows;

import org.jspecify.annotations.NullMarked;
