/**
 * What a job is charged to each payer, with its tax: before any invoice, number or state. All types
 * are immutable and thread-safe. Start at {@link clenchbook.jobs.charge.JobCharges}.
 */
@NullMarked
package clenchbook.jobs.charge;

import org.jspecify.annotations.NullMarked;
