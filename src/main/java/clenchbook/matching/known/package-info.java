/**
 * What the book and the register know of owners, documents and payments, as far as bank entries are
 * set against it. All types are immutable and thread-safe.
 */
@NullMarked
package clenchbook.matching.known;

import org.jspecify.annotations.NullMarked;
