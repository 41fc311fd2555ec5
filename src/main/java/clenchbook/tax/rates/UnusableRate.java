package clenchbook.tax.rates;

import clenchbook.texts.Message;
import clenchbook.texts.Told;

/** A row of a rate table, or a table, that can't be used, with the reason in one line. */
public final class UnusableRate extends IllegalArgumentException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message message;

  /**
   * Makes one.
   *
   * @param message the reason, without the file's name
   */
  public UnusableRate(Message message) {
    super(message.toString());
    this.message = message;
  }

  @Override
  public Message message() {
    return message;
  }
}
