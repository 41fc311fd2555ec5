package clenchbook.backup;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** A backup that can't be written, or a file that is none or is damaged; says why in one clause. */
public final class UnsoundBackup extends Exception implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Says why.
   *
   * @param message a clause without a full stop
   */
  public UnsoundBackup(Message message) {
    super(message.toString());
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
