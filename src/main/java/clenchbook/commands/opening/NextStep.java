package clenchbook.commands.opening;

import clenchbook.texts.Message;
import java.nio.file.Path;

/** What to do after a command: one line, the last that it says. */
public final class NextStep {
  private NextStep() {}

  /**
   * The line after a command.
   *
   * @param what a clause in the imperative, without a full stop
   * @return the line
   */
  public static Message of(Message what) {
    return Message.of("commands.next", what);
  }

  /**
   * A command as it is typed.
   *
   * @param name the command
   * @param book the workbook, as it was named
   * @param more options, each with its value; may be empty
   * @return such as {@code clenchbook send "my book.xlsx" --month 2026-10}
   */
  public static String command(String name, Path book, String... more) {
    String options = more.length == 0 ? "" : " " + String.join(" ", more);
    return StartedAs.ofProcess().line(name, book.toString()) + options;
  }
}
