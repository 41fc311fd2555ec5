package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.billing.mails.MailLedger;
import clenchbook.delivery.message.OutgoingMail;
import java.util.List;

/**
 * A mail that is to be delivered.
 *
 * @param id its name in the ledger
 * @param mail what goes off
 * @param again whether the farrier asked for it by name, though it may have gone off before
 * @param formerly earlier names of the owner, under one of which it may have gone off
 */
public record QueuedMail(MailId id, OutgoingMail mail, boolean again, List<String> formerly) {
  /** Copies its list. */
  public QueuedMail {
    formerly = List.copyOf(formerly);
  }

  /** A mail to an owner who never had another name. */
  public QueuedMail(MailId id, OutgoingMail mail, boolean again) {
    this(id, mail, again, List.of());
  }

  /**
   * The mail by the name under which a ledger knows it, lest it go off again under another.
   *
   * @param ledger the ledger
   * @return this one where it is known or new
   */
  QueuedMail knownTo(MailLedger ledger) {
    if (ledger.find(id).isPresent()) {
      return this;
    }
    return formerly.stream()
        .map(name -> new MailId(name, id.period(), id.documents()))
        .filter(other -> ledger.find(other).isPresent())
        .findFirst()
        .map(other -> new QueuedMail(other, mail, again, formerly))
        .orElse(this);
  }
}
