package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.texts.Message;

/**
 * What became of one mail in this run.
 *
 * @param id which mail
 * @param result in one word
 * @param detail the server's words or what was seen; {@link Message#NONE} where there is nothing to
 *     say
 */
public record DeliveryOutcome(MailId id, Result result, Message detail) {
  /** What became of a mail. */
  public enum Result {
    /** The server took it. */
    DELIVERED,
    /** An earlier run had delivered it; nothing was sent. */
    DELIVERED_BEFORE,
    /** The server refused it for good. */
    REFUSED,
    /** It was not sent; the next run will. */
    PUT_OFF,
    /** It may have gone off or not; it is sent again only where the farrier says so. */
    UNSURE
  }

  /** Whether the mail still waits for someone: refused, put off or unsure. */
  public boolean needsAttention() {
    return result == Result.REFUSED || result == Result.PUT_OFF || result == Result.UNSURE;
  }
}
