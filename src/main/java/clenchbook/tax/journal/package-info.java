/**
 * Double-entry journal: accounts, postings and entries that cannot be made unless they balance.
 * Immutable and thread-safe. Start at {@link clenchbook.tax.journal.JournalEntry}.
 */
@NullMarked
package clenchbook.tax.journal;

import org.jspecify.annotations.NullMarked;
