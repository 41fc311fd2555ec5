/**
 * What a job is charged to each payer, with its tax: before any invoice, number or state. All types
 * are immutable and thread-safe; this package uses money, book and job. Start at {@link
 * clenchbook.charge.JobCharges}.
 */
package clenchbook.charge;
