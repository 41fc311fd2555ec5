/**
 * Who is due when and where, as lists, pages and cards. All types are immutable and thread-safe.
 * Start at {@link clenchbook.schedule.DueList}.
 */
@NullMarked
package clenchbook.schedule;

import org.jspecify.annotations.NullMarked;
