/**
 * The words for sheets, headings, settings and the choices in cells, and when two of them are the
 * same. Start at {@link clenchbook.reading.words.Vocabulary}.
 */
@NullMarked
package clenchbook.reading.words;

import org.jspecify.annotations.NullMarked;
