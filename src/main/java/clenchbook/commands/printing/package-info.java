/**
 * Prints the letters and reports of a run, some of them while the rest is still being worked out.
 * Start at {@link clenchbook.commands.printing.Printing}.
 */
@NullMarked
package clenchbook.commands.printing;

import org.jspecify.annotations.NullMarked;
