/**
 * Faults of the farrier's data as values: what is wrong, in which cell, what was expected. All
 * types are immutable and thread-safe. Start at {@link clenchbook.problem.Problem}.
 */
@NullMarked
package clenchbook.problem;

import org.jspecify.annotations.NullMarked;
