/**
 * Mail: each owner's documents as a message, the outbox of {@code .eml} files, and delivery over
 * SMTP.
 *
 * <p>It knows nothing of invoices: only bytes, names, addresses, a language and the words to fill a
 * template with. It may use no other package of the shell. All records are immutable; {@link
 * clenchbook.delivery.SmtpDelivery} is for one thread.
 *
 * <p>Start at {@link clenchbook.delivery.OutgoingMail}, then {@link
 * clenchbook.delivery.MailMessage} (how it becomes bytes) and {@link
 * clenchbook.delivery.SmtpDelivery} (how it reaches the mail server once, and no more).
 */
@NullMarked
package clenchbook.delivery;

import org.jspecify.annotations.NullMarked;
