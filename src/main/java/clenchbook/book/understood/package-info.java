/**
 * What the program made of a book's sheets and columns, and what it assumed for want of a setting.
 * All types are immutable. Start at {@link clenchbook.book.understood.Understood}.
 */
@NullMarked
package clenchbook.book.understood;

import org.jspecify.annotations.NullMarked;
