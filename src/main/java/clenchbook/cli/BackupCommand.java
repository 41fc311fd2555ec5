package clenchbook.cli;

import clenchbook.commands.moving.BackupRequest;
import clenchbook.commands.moving.BackupRun;
import clenchbook.commands.opening.Terminal;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code backup}. */
@Command(
    description = "cli.command.backup",
    mixinStandardHelpOptions = true,
    footer = {"", "cli.command.backupFoot"})
final class BackupCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--to",
      paramLabel = "FILE",
      required = true,
      descriptionKey = "cli.help.backupTo")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path to;

  @Option(names = "--rates", paramLabel = "DIR", descriptionKey = "cli.help.backupRates")
  private Optional<Path> rates = Optional.empty();

  @Override
  public Integer call() {
    BackupRequest request = new BackupRequest(book.book, to, book.out, book.register(), rates);
    return new BackupRun(request, book.machine(), Terminal.ofProcess()).run();
  }
}
