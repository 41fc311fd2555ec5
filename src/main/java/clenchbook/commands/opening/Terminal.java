package clenchbook.commands.opening;

import java.io.Console;
import java.io.PrintStream;

/**
 * Where a run speaks to the farrier: results to one stream, warnings and progress to the other.
 * Progress is shown only to people, never into a file or pipe.
 */
public final class Terminal {
  private final PrintStream out;
  private final PrintStream err;
  private final boolean people;
  private boolean line;

  /**
   * Makes a terminal.
   *
   * @param out for results
   * @param err for warnings and progress
   * @param people whether somebody is watching
   */
  public Terminal(PrintStream out, PrintStream err, boolean people) {
    this.out = out;
    this.err = err;
    this.people = people;
  }

  /**
   * The process's own terminal.
   *
   * @return standard output and error; people watch when both ends are a terminal
   */
  public static Terminal ofProcess() {
    return new Terminal(System.out, System.err, watched());
  }

  private static boolean watched() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // From JDK 22 on a console exists without a terminal, and says so.
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderJdk) {
      return true;
    }
  }

  /**
   * Prints a line of the result.
   *
   * @param text the line
   */
  public void say(String text) {
    clear();
    out.println(text);
  }

  /**
   * Prints a warning.
   *
   * @param text the line
   */
  public void warn(String text) {
    clear();
    err.println(text);
  }

  /**
   * Shows what is going on, on one line that the next one replaces.
   *
   * @param text what is being done
   */
  public void progress(String text) {
    if (people) {
      clear();
      err.print("\r" + text);
      err.flush();
      line = true;
    }
  }

  /** Takes the progress line away. */
  public void clear() {
    if (line) {
      err.print("\r\u001b[K");
      err.flush();
      line = false;
    }
  }

  /**
   * Whether somebody is watching.
   *
   * @return true for people
   */
  public boolean watchedByPeople() {
    return people;
  }
}
