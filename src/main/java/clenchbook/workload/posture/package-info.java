/**
 * How long a bent trunk may be held still. Immutable and thread-safe. Start at {@link
 * clenchbook.workload.posture.TrunkPosture}.
 */
@NullMarked
package clenchbook.workload.posture;

import org.jspecify.annotations.NullMarked;
