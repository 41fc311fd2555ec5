/**
 * Invoices, credit notes and statements: their words in each language, their fields, the logo and
 * the payment code. Start at {@link clenchbook.print.invoice.InvoicePage}.
 */
@NullMarked
package clenchbook.print.invoice;

import org.jspecify.annotations.NullMarked;
