/**
 * The noise of a day under each rule that judges it. Immutable and thread-safe. Start at {@link
 * clenchbook.workload.noise.NoiseDose}.
 */
@NullMarked
package clenchbook.workload.noise;

import org.jspecify.annotations.NullMarked;
