/**
 * From visits to jobs: each row with its Work's standard, its horse, its payers and its materials
 * found, and every rule between sheets applied. All types are immutable and thread-safe. Start at
 * {@link clenchbook.jobs.JobResolver}.
 */
@NullMarked
package clenchbook.jobs;

import org.jspecify.annotations.NullMarked;
