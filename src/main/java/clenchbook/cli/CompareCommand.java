package clenchbook.cli;

import clenchbook.commands.CompareRun;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code compare}. */
@Command(
    description = "Hot with cold and handmade with keg, like with like, over any period.",
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "First day; default: the twelve months that end with the last.")
  private Optional<LocalDate> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "DATE",
      description = "Last day; default: the end of the month of the last visit.")
  private Optional<LocalDate> to = Optional.empty();

  @Override
  public Integer call() {
    return new CompareRun(book.book, from, to, book.out, book.machine(), book.terminal()).run();
  }
}
