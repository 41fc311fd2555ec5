package clenchbook.delivery;

import jakarta.mail.MessagingException;

/** The connection ended or fell silent before the server had answered. */
final class LineLost extends MessagingException {
  private static final long serialVersionUID = 1L;

  private final boolean handedOver;

  LineLost(String what, boolean handedOver) {
    super(what);
    this.handedOver = handedOver;
  }

  /** Whether the message's end was told to the server, or may have been. */
  boolean afterHandingOver() {
    return handedOver;
  }
}
