package clenchbook.reading.rates;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/**
 * A rates file that cannot be used as it stands; the message names the file, the line and what is
 * wrong.
 */
public final class RefusedRatesException extends RuntimeException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Refuses.
   *
   * @param message one sentence for the terminal
   */
  public RefusedRatesException(Message message) {
    super(message.toString());
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
