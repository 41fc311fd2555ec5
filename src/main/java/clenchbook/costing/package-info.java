/**
 * What each job cost and what it left: materials, gas, sundries, travel, overhead, labour, margins.
 * All types but the passes are immutable and thread-safe. Start at {@link
 * clenchbook.costing.JobCosts}.
 */
@NullMarked
package clenchbook.costing;

import org.jspecify.annotations.NullMarked;
