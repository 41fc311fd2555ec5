package clenchbook.cli;

import clenchbook.texts.Message;
import clenchbook.texts.Told;
import picocli.CommandLine.TypeConversionException;

/** A word of the command line that can't become the value it stands for. */
final class Unreadable extends TypeConversionException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message why;

  Unreadable(Message why) {
    super(why.toString());
    this.why = why;
  }

  @Override
  public Message message() {
    return why;
  }
}
