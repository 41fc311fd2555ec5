package clenchbook.cli;

import clenchbook.commands.opening.DiskTrouble;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import clenchbook.texts.Told;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Why a run could not be done, in the one line that the farrier sees. */
final class CouldNotRun {
  private CouldNotRun() {}

  /**
   * Says why.
   *
   * @param fault what happened
   * @param texts the language of the run
   * @return one line
   */
  static String of(Throwable fault, Texts texts) {
    return oneLine(texts.say(message(fault)));
  }

  private static Message message(Throwable fault) {
    if (fault instanceof Told told) {
      return told.message();
    }
    if (fault instanceof UncheckedIOException && fault.getCause() instanceof IOException trouble) {
      return Message.of("cli.diskRefuses", DiskTrouble.why(trouble));
    }
    return fault instanceof OutOfMemoryError
        ? Message.of("cli.tooLittleMemory")
        : Message.of("cli.shouldNot", fault.toString());
  }

  private static String oneLine(String text) {
    return text.lines().map(String::strip).reduce((one, next) -> one + " " + next).orElse("");
  }
}
