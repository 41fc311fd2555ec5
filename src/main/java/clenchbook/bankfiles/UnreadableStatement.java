package clenchbook.bankfiles;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** A bank file that can't be used, with the reason in one line. */
public final class UnreadableStatement extends RuntimeException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Makes one.
   *
   * @param message the reason, in one line, without the file's name
   */
  public UnreadableStatement(Message message) {
    super(message.toString());
    this.message = message;
  }

  /**
   * Makes one.
   *
   * @param message the reason, in one line, without the file's name
   * @param cause what was seen
   */
  public UnreadableStatement(Message message, Throwable cause) {
    super(message.toString(), cause);
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
