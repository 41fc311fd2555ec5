package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.delivery.message.OutgoingMail;

/**
 * A mail that is to be delivered.
 *
 * @param id its name in the ledger
 * @param mail what goes off
 * @param again whether the farrier asked for it by name, though it may have gone off before
 */
public record QueuedMail(MailId id, OutgoingMail mail, boolean again) {}
