/**
 * Hand-arm vibration of vibrating tools only. Immutable and thread-safe. Start at {@link
 * clenchbook.workload.vibration.HandArmVibration}.
 */
@NullMarked
package clenchbook.workload.vibration;

import org.jspecify.annotations.NullMarked;
