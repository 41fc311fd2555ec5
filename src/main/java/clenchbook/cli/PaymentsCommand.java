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
    description = {
      "Who has paid: sets bank statements against open invoices and writes rows to paste into"
          + " Payments.",
      "Reads camt.052, camt.053, camt.054, OFX, MT940 and CSV; changes neither book nor register."
    },
    mixinStandardHelpOptions = true)
final class PaymentsCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--statement",
      paramLabel = "FILE",
      required = true,
      description = "A bank statement; may be given several times.")
  private List<Path> statements = new ArrayList<>();

  @Override
  public Integer call() {
    return new PaymentsRun(
            book.book, statements, book.out, book.register(), book.machine(), book.terminal())
        .run();
  }
}
