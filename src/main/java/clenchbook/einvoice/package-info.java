/**
 * Structured invoices: what EN 16931 asks of an invoice, filled from the documents that the
 * register holds and written as a Cross Industry Invoice. Amounts are taken over as they are; the
 * only sums made here are of amounts of one tax category. All types are immutable and thread-safe;
 * this package uses values, book, jobs and billing. Start at {@link
 * clenchbook.einvoice.CrossIndustryText}.
 */
package clenchbook.einvoice;
