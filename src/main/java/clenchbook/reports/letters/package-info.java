/**
 * What an invoice, a credit note and a statement will say: final figures and words, ready to print.
 * Immutable and thread-safe. Start at {@link clenchbook.reports.letters.InvoiceDocument}.
 */
@NullMarked
package clenchbook.reports.letters;

import org.jspecify.annotations.NullMarked;
