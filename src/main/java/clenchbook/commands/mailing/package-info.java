/**
 * Puts each owner's mail together, writes the outbox and sends what was not delivered. Start at
 * {@link clenchbook.commands.mailing.PostRoom}.
 */
@NullMarked
package clenchbook.commands.mailing;

import org.jspecify.annotations.NullMarked;
