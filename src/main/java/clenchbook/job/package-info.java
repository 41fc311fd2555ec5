/**
 * From visits to jobs: each row with its Work's standard, its horse, its payers and its materials
 * found, and every rule between sheets applied. All types are immutable and thread-safe; this
 * package uses money, measure, problem and book. Start at {@link clenchbook.job.JobResolver}.
 */
package clenchbook.job;
