package clenchbook.cli;

import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.RunFault;
import clenchbook.register.RegisterFault;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Why a run could not be done, in the one line that the farrier sees. */
final class CouldNotRun {
  private CouldNotRun() {}

  /**
   * Says why.
   *
   * @param fault what happened
   * @return one line
   */
  static String of(Throwable fault) {
    if (fault instanceof RunFault || fault instanceof RegisterFault) {
      return oneLine(String.valueOf(fault.getMessage()));
    }
    if (fault instanceof UncheckedIOException && fault.getCause() instanceof IOException trouble) {
      return oneLine("the disk refuses: " + DiskTrouble.why(trouble));
    }
    if (fault instanceof OutOfMemoryError) {
      return "this machine has too little memory for the book; close other programs, then run"
          + " again";
    }
    return oneLine(
        "something went wrong that should not (" + fault + "); nothing was half-written");
  }

  private static String oneLine(String text) {
    return text.lines().map(String::strip).reduce((one, next) -> one + " " + next).orElse("");
  }
}
