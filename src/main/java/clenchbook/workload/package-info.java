/**
 * What the year's work asks of the farrier's body, as figures and pages. None of the methods was
 * validated on farriers; they are an aid to planning and no medical opinion. Start at {@link
 * clenchbook.workload.Workload}.
 */
@NullMarked
package clenchbook.workload;

import org.jspecify.annotations.NullMarked;
