package clenchbook.delivery;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** There is no password to give; the message is one line for the terminal and holds no secret. */
public final class CredentialFault extends Exception implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /** What is missing or wrong. */
  public CredentialFault(Message message) {
    super(message.toString());
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
