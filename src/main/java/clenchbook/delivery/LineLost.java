package clenchbook.delivery;

import clenchbook.texts.Message;
import clenchbook.texts.Told;
import jakarta.mail.MessagingException;

/** The connection ended or fell silent before the server had answered. */
final class LineLost extends MessagingException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;
  private final boolean handedOver;

  LineLost(Message message, boolean handedOver) {
    super(message.toString());
    this.message = message;
    this.handedOver = handedOver;
  }

  /** Whether the message's end was told to the server, or may have been. */
  boolean afterHandingOver() {
    return handedOver;
  }

  @Override
  public Message message() {
    return message;
  }
}
