package clenchbook.delivery.message;

import java.time.LocalDate;
import java.util.List;

/**
 * One owner's mail, complete: who gets it, who writes it, what it says and what goes with it.
 *
 * @param owner the owner's name as the book has it; made fit for a header before it stands in one
 * @param to where it goes: mostly one address, else all of them get the one message or none does
 * @param from the farrier's address
 * @param fromName the name beside it, such as the business's; may be empty
 * @param text subject and wording
 * @param date the day the documents bear; the message in the outbox bears it too
 * @param attachments in the order the owner sees them
 */
public record OutgoingMail(
    String owner,
    List<MailAddress> to,
    MailAddress from,
    String fromName,
    MailText text,
    LocalDate date,
    List<Attachment> attachments) {
  /**
   * @throws IllegalArgumentException where the name could not stand in a header, or there is no
   *     address
   */
  public OutgoingMail {
    to = List.copyOf(to);
    if (to.isEmpty()) {
      throw new IllegalArgumentException("a mail goes to somebody");
    }
    HeaderText.requireSafe("the sender's name", fromName);
    attachments = List.copyOf(attachments);
  }

  /** Whether only a server that speaks SMTPUTF8 can carry it. */
  public boolean needsUtf8() {
    return from.needsUtf8() || to.stream().anyMatch(MailAddress::needsUtf8);
  }
}
