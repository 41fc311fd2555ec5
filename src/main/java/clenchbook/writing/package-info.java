/**
 * The workbooks that the program writes itself: the starter and the marked copy, each in little
 * memory and with the same bytes each time. Start at {@link clenchbook.writing.MarkedCopyWriter}.
 */
@NullMarked
package clenchbook.writing;

import org.jspecify.annotations.NullMarked;
