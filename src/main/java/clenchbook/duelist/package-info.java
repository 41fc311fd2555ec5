/**
 * Who is due when and where: the next visit of each horse, the round it belongs to, what it had on
 * last time, and the calendar a phone can take in.
 *
 * <p>May use {@code money}, {@code problem}, {@code book}, {@code job}, {@code report}; touches no
 * file, clock or locale. All types are immutable and thread-safe. Start reading at {@link
 * clenchbook.duelist.DueDates}.
 */
@org.jspecify.annotations.NullMarked
package clenchbook.duelist;
