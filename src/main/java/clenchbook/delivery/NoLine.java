package clenchbook.delivery;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** No connection to the mail server came about; nothing of any mail has been sent over it. */
final class NoLine extends Exception implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;
  private final boolean passing;

  NoLine(Message message, boolean passing, Throwable cause) {
    super(message.toString(), cause);
    this.message = message;
    this.passing = passing;
  }

  /** Whether another try later may fare better. */
  boolean mayPass() {
    return passing;
  }

  @Override
  public Message message() {
    return message;
  }
}
