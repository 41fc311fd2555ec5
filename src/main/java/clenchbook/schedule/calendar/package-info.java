/**
 * The visits due as a calendar that a phone can take in (RFC 5545). Immutable and thread-safe.
 * Start at {@link clenchbook.schedule.calendar.DueCalendar}.
 */
@NullMarked
package clenchbook.schedule.calendar;

import org.jspecify.annotations.NullMarked;
