/**
 * What one invoice or credit note bears: its lines, its tax, its state. Immutable and thread-safe.
 * Start at {@link clenchbook.billing.documents.BilledDocument}.
 */
@NullMarked
package clenchbook.billing.documents;

import org.jspecify.annotations.NullMarked;
