/**
 * The next visit of each horse: its interval, the day it falls due, the work it usually gets.
 * Immutable and thread-safe. Start at {@link clenchbook.schedule.due.DueDates}.
 */
@NullMarked
package clenchbook.schedule.due;

import org.jspecify.annotations.NullMarked;
