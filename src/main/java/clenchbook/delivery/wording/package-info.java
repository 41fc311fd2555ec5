/**
 * The words of a mail in each language, and the template that the farrier may put in their place.
 * Start at {@link clenchbook.delivery.wording.MailWording}.
 */
@NullMarked
package clenchbook.delivery.wording;

import org.jspecify.annotations.NullMarked;
