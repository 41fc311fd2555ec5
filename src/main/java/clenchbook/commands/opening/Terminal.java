package clenchbook.commands.opening;

import clenchbook.reading.texts.TextFiles;
import clenchbook.reading.words.YesNo;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.io.Console;
import java.io.PrintStream;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where a run speaks to the farrier: results to one stream, warnings and progress to the other.
 * Progress is shown only to people, never into a file or pipe. It speaks the machine's language
 * until a book is open, then the book's.
 */
public final class Terminal {
  private final PrintStream out;
  private final PrintStream err;
  private final boolean people;
  private final Supplier<Optional<String>> answers;
  private Texts texts = TextFiles.in(Texts.ENGLISH, "");
  private boolean line;

  /**
   * Makes a terminal.
   *
   * @param out for results
   * @param err for warnings and progress
   * @param people whether somebody is watching
   */
  public Terminal(PrintStream out, PrintStream err, boolean people) {
    this(out, err, people, Optional::empty);
  }

  /**
   * Makes a terminal that can be asked.
   *
   * @param out for results
   * @param err for warnings and progress
   * @param people whether somebody is watching
   * @param answers reads a line that was typed; empty at the end of the input
   */
  public Terminal(
      PrintStream out, PrintStream err, boolean people, Supplier<Optional<String>> answers) {
    this.out = out;
    this.err = err;
    this.people = people;
    this.answers = answers;
  }

  /**
   * The process's own terminal.
   *
   * @return standard output and error; people watch when both ends are a terminal
   */
  public static Terminal ofProcess() {
    Terminal terminal =
        new Terminal(
            System.out,
            System.err,
            watched(),
            () -> Optional.ofNullable(System.console()).map(Console::readLine));
    Locale machine = MachineLocale.own();
    terminal.speak(TextFiles.in(machine.getLanguage(), machine.getCountry()));
    return terminal;
  }

  /**
   * Speaks another language from here on.
   *
   * @param language its texts
   */
  public void speak(Texts language) {
    texts = language;
  }

  /** The language that is spoken here. */
  public Texts texts() {
    return texts;
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
   * Prints a line of the result.
   *
   * @param message the line
   */
  public void say(Message message) {
    say(texts.say(message));
  }

  /**
   * Prints a warning.
   *
   * @param message the line
   */
  public void warn(Message message) {
    warn(texts.say(message));
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
   * Asks for a yes where somebody is watching.
   *
   * @param question what is agreed to
   * @return true after a yes in any of the five languages, and where nobody is watching
   */
  public boolean agrees(Message question) {
    if (!people) {
      return true;
    }
    clear();
    out.print(texts.say("commands.agree", question));
    out.flush();
    return answers.get().flatMap(YesNo::read).orElse(false);
  }

  /**
   * Shows what is going on, on one line that the next one replaces.
   *
   * @param message what is being done
   */
  public void progress(Message message) {
    if (people) {
      clear();
      err.print("\r" + texts.say(message));
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
