/**
 * Reads what the program says in each language from its own resources. Thread-safe. Start at {@link
 * clenchbook.reading.texts.TextFiles}.
 */
@NullMarked
package clenchbook.reading.texts;

import org.jspecify.annotations.NullMarked;
