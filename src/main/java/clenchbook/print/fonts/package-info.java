/**
 * The typefaces that come with the program, and which letters they lack. Start at {@link
 * clenchbook.print.fonts.Typefaces}.
 */
@NullMarked
package clenchbook.print.fonts;

import org.jspecify.annotations.NullMarked;
