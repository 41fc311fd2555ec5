/**
 * Which structured invoices an owner wants. All types are immutable and thread-safe. Start at
 * {@link clenchbook.book.einvoice.EInvoiceWish}.
 */
@NullMarked
package clenchbook.book.einvoice;

import org.jspecify.annotations.NullMarked;
