package clenchbook.billing.mails;

import java.util.Optional;

/**
 * Where the steps of each mail are written down. Every method returns only when its step would
 * outlive a power cut; where it cannot be written the method throws, and the mail goes no further.
 */
public interface MailLedger {
  /**
   * Takes several steps as one: all of them are on disk when it returns, or none.
   *
   * @param steps calls of this ledger's other methods
   */
  void together(Runnable steps);

  /** How far the mail has come, or empty where it was never intended. */
  Optional<MailState> find(MailId id);

  /**
   * Takes the mail for this run: {@link MailState#INTENDED}. Nothing but this may start a mail, and
   * of two runs at once only the one that took it last can hand it over.
   *
   * @param again whether the farrier asked for this mail by name, which allows it in every state
   * @return false, and nothing is changed, where the mail's state forbids it
   */
  boolean intend(MailId id, boolean again);

  /**
   * The server is about to be told the mail's end: {@link MailState#HANDED_OVER}.
   *
   * @throws IllegalStateException where this run does not hold the mail, or no longer
   */
  void handedOver(MailId id);

  /** The server took the mail: {@link MailState#DELIVERED}. */
  void delivered(MailId id);

  /** The server refused the mail for good: {@link MailState#REFUSED}. */
  void refused(MailId id, String reason);

  /** The server surely has nothing of the mail: back to {@link MailState#INTENDED}. */
  void putOff(MailId id, String reason);

  /** Nobody knows whether the server took the mail: {@link MailState#UNSURE}. */
  void unsure(MailId id, String reason);
}
