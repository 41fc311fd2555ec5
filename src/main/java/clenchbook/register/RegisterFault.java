package clenchbook.register;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** The register can't be used; the message is one line that says what to do. */
public final class RegisterFault extends RuntimeException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Says what is wrong.
   *
   * @param message one line, with what to do
   */
  public RegisterFault(Message message) {
    super(message.toString());
    this.message = message;
  }

  /**
   * Says what is wrong, and what caused it.
   *
   * @param message one line, with what to do
   * @param cause the database's own word
   */
  public RegisterFault(Message message, Throwable cause) {
    super(message.toString(), cause);
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
