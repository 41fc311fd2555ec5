package clenchbook.cli;

import clenchbook.commands.PaymentsRun;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code payments}. */
@Command(
    description = {"cli.command.payments", "cli.command.paymentsReads"},
    mixinStandardHelpOptions = true)
final class PaymentsCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--statement",
      paramLabel = "FILE",
      required = true,
      descriptionKey = "cli.help.statement")
  private List<Path> statements = new ArrayList<>();

  @Override
  public Integer call() {
    return new PaymentsRun(
            book.book, statements, book.out, book.register(), book.machine(), book.terminal())
        .run();
  }
}
