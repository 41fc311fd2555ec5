/**
 * What the program says to the farrier, as values: a key with what fills its gaps, and the texts of
 * a language that make it a sentence. All types are immutable and thread-safe. Start at {@link
 * clenchbook.texts.Message}.
 */
@NullMarked
package clenchbook.texts;

import org.jspecify.annotations.NullMarked;
