package clenchbook.cli;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.Terminal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** What every command on a workbook takes beside it: where files lie, and the day of the run. */
class RunOptions {
  @Option(names = "--out", paramLabel = "DIR", descriptionKey = "cli.help.out")
  Optional<Path> out = Optional.empty();

  @Option(names = "--register", paramLabel = "FILE", descriptionKey = "cli.help.register")
  Optional<Path> register = Optional.empty();

  @Option(names = "--new-register", descriptionKey = "cli.help.newRegister")
  private boolean newRegister;

  @Option(names = "--same-book", descriptionKey = "cli.help.sameBook")
  private boolean sameBook;

  @Option(names = "--today", paramLabel = "DATE", descriptionKey = "cli.help.today")
  Optional<LocalDate> today = Optional.empty();

  RegisterChoice register() {
    return new RegisterChoice(register, newRegister, sameBook);
  }

  @Option(names = "--headings", paramLabel = "FILE", descriptionKey = "cli.help.headings")
  Optional<Path> headings = Optional.empty();

  /** Speaks the machine's language, then the book's; of one run, so that a fault is told in it. */
  private final Terminal terminal = Terminal.ofProcess();

  Terminal terminal() {
    return terminal;
  }

  /**
   * Where the run of a command speaks.
   *
   * @param line the command that runs, or the program where none does
   * @return its terminal
   */
  static Terminal terminalOf(CommandLine line) {
    return line.getMixins().values().stream()
        .filter(RunOptions.class::isInstance)
        .map(options -> ((RunOptions) options).terminal())
        .findFirst()
        .orElseGet(Terminal::ofProcess);
  }

  Machine machine() {
    return Machine.here(today).readingBy(headings);
  }
}
