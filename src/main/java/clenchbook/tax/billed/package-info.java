/**
 * Everything that was billed, whatever the year, and what owners owe at both ends of a period.
 * Immutable and thread-safe. Start at {@link clenchbook.tax.billed.BilledBook}.
 */
@NullMarked
package clenchbook.tax.billed;

import org.jspecify.annotations.NullMarked;
