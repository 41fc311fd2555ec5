/**
 * What is known of each mail to an owner: which it is, how far it has come, and what must be
 * written down before its next step. Values and one interface; who sends and who stores is the
 * shell's. Start at {@link clenchbook.billing.mails.MailLedger}.
 */
@NullMarked
package clenchbook.billing.mails;

import org.jspecify.annotations.NullMarked;
