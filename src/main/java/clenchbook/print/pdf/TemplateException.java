package clenchbook.print.pdf;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** A page template that can't be used, in words for the farrier. */
public final class TemplateException extends RuntimeException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * A template that can't be used.
   *
   * @param message what is wrong, beginning with the file's name
   * @param cause what the report library said
   */
  public TemplateException(Message message, Throwable cause) {
    super(message.toString(), cause);
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
