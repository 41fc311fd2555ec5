package clenchbook.cli;

import clenchbook.commands.BookCheck;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code check}. */
@Command(description = "cli.command.check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(names = "--marked", paramLabel = "COPY", descriptionKey = "cli.help.marked")
  private Optional<Path> marked = Optional.empty();

  @Option(names = "--propose", descriptionKey = "cli.help.propose")
  private boolean propose;

  @Override
  public Integer call() {
    return new BookCheck(book.book, book.register, marked, propose, book.machine(), book.terminal())
        .run();
  }
}
