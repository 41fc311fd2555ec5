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
    description =
        "Packs the book, its register and all that a run reads beside it into one zip with"
            + " digests.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Reports are not packed: month-end makes them again, issued invoices byte for byte. No",
      "password is packed."
    })
final class BackupCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--to",
      paramLabel = "FILE",
      required = true,
      description = "The zip to write; one that exists is never overwritten.")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path to;

  @Option(
      names = "--rates",
      paramLabel = "DIR",
      description = "Rate files that year-end is given; default: 'rates' beside the workbook.")
  private Optional<Path> rates = Optional.empty();

  @Override
  public Integer call() {
    BackupRequest request = new BackupRequest(book.book, to, book.out, book.register(), rates);
    return new BackupRun(request, book.machine(), Terminal.ofProcess()).run();
  }
}
