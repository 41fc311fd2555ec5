package clenchbook.print.files;

import clenchbook.texts.Message;
import clenchbook.texts.Told;
import java.io.IOException;

/** A file that may not be used or written; says why in one clause. */
public final class RefusedFile extends IOException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Says why.
   *
   * @param message a clause without a full stop
   */
  public RefusedFile(Message message) {
    super(message.toString());
    this.message = message;
  }

  /**
   * Says why, and what caused it.
   *
   * @param message a clause without a full stop
   * @param cause the cause
   */
  public RefusedFile(Message message, Throwable cause) {
    super(message.toString(), cause);
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }

  /**
   * The reason of any trouble with a file.
   *
   * @param trouble what was thrown
   * @return why; the trouble's own words where nobody put it into ours
   */
  public static Message why(IOException trouble) {
    return trouble instanceof Told told
        ? told.message()
        : Message.literal(String.valueOf(trouble.getMessage()));
  }
}
