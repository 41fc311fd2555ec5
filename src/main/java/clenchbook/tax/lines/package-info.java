/**
 * The lines of a summary as the regime names them, each with the rows that add to it to the cent.
 * Start at {@link clenchbook.tax.lines.SummaryLine}.
 */
@NullMarked
package clenchbook.tax.lines;

import org.jspecify.annotations.NullMarked;
