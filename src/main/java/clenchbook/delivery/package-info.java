/**
 * Mail over SMTP: a queue whose every state is in the register, and a line to the server that tells
 * what it answered. {@link clenchbook.delivery.SmtpDelivery} is for one thread. Start there.
 */
@NullMarked
package clenchbook.delivery;

import org.jspecify.annotations.NullMarked;
