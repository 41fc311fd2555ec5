/**
 * The week ahead and the round: which places to visit on one day. Immutable and thread-safe. Start
 * at {@link clenchbook.schedule.round.Round}.
 */
@NullMarked
package clenchbook.schedule.round;

import org.jspecify.annotations.NullMarked;
