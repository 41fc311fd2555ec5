/**
 * A mail as a message: only bytes, names, addresses and a language; it knows nothing of invoices.
 * All records are immutable. Start at {@link clenchbook.delivery.message.OutgoingMail}.
 */
@NullMarked
package clenchbook.delivery.message;

import org.jspecify.annotations.NullMarked;
