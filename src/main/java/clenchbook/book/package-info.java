/**
 * The farrier's book as records of the trade: what was read, cell by cell, before any rule between
 * sheets is applied. Names and texts are trimmed and never null, blank cells are empty texts or
 * empty optionals; every record knows the row it came from. All types are immutable and
 * thread-safe. Start at {@link clenchbook.book.Book}.
 */
@NullMarked
package clenchbook.book;

import org.jspecify.annotations.NullMarked;
