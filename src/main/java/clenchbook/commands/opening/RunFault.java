package clenchbook.commands.opening;

import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import clenchbook.texts.Told;

/** The run could not be done; the message is one line for the farrier, here in English. */
public final class RunFault extends RuntimeException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Says why.
   *
   * @param message one line, with what to do
   */
  public RunFault(Message message) {
    super(english(message));
    this.message = message;
  }

  /**
   * Says why, and what caused it.
   *
   * @param message one line, with what to do
   * @param cause the cause
   */
  public RunFault(Message message, Throwable cause) {
    super(english(message), cause);
    this.message = message;
  }

  private static String english(Message message) {
    return TextFiles.in(Texts.ENGLISH, "").say(message);
  }

  @Override
  public Message message() {
    return message;
  }
}
