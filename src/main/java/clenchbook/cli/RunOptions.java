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
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder of the reports; default: '<workbook name> reports' beside it.")
  Optional<Path> out = Optional.empty();

  @Option(
      names = "--register",
      paramLabel = "FILE",
      description = "The register; default: '<workbook name>.register.db' beside the workbook.")
  Optional<Path> register = Optional.empty();

  @Option(
      names = "--new-register",
      description = "Begin a register although there seems to be one already.")
  private boolean newRegister;

  @Option(
      names = "--same-book",
      description = "Take the register although most of what it billed is no row of this book.")
  private boolean sameBook;

  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "A day that stands for the day of the run, such as 2026-11-02.")
  Optional<LocalDate> today = Optional.empty();

  RegisterChoice register() {
    return new RegisterChoice(register, newRegister, sameBook);
  }

  @Option(
      names = "--headings",
      paramLabel = "FILE",
      description =
          "Your own words for sheets and headings (Sheet,Mine,Means); default: '<workbook"
              + " name>.headings.csv' beside the workbook, where the book has no sheet Headings.")
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
