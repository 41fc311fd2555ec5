/**
 * Strain of hand and wrist by the Revised, Composite and Cumulative Strain Index, from the
 * farrier's own ratings. It says nothing of the back or of impact. Immutable and thread-safe. Start
 * at {@link clenchbook.workload.strain.RevisedStrainIndex}.
 */
@NullMarked
package clenchbook.workload.strain;

import org.jspecify.annotations.NullMarked;
