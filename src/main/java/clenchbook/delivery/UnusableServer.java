package clenchbook.delivery;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** Host or port of a mail server that are none. */
public final class UnusableServer extends IllegalArgumentException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  UnusableServer(Message message) {
    super(message.toString());
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
