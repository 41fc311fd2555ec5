package clenchbook.cli;

import clenchbook.commands.CompareRun;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code compare}. */
@Command(description = "cli.command.compare", mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(names = "--from", paramLabel = "DATE", descriptionKey = "cli.help.from")
  private Optional<LocalDate> from = Optional.empty();

  @Option(names = "--to", paramLabel = "DATE", descriptionKey = "cli.help.to")
  private Optional<LocalDate> to = Optional.empty();

  @Override
  public Integer call() {
    return new CompareRun(book.book, from, to, book.out, book.machine(), book.terminal()).run();
  }
}
