package clenchbook.cli;

import clenchbook.commands.MonthEndRequest;
import clenchbook.commands.MonthEndRun;
import clenchbook.commands.opening.Terminal;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code month-end}. */
@Command(
    description =
        "Costs, invoices, statements, margins, comparisons, workload, stock, due list, problems.",
    mixinStandardHelpOptions = true)
final class MonthEndCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(names = "--month", paramLabel = "YYYY-MM", required = true, description = "The month.")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private YearMonth month;

  @Option(
      names = "--include-earlier",
      description = "Bill earlier visits that no invoice bears, never from before Opening date.")
  private boolean includeEarlier;

  @Option(
      names = "--correct",
      paramLabel = "NUMBER",
      description = "Correct an issued invoice at once with a credit note of this month.")
  private Optional<String> correct = Optional.empty();

  @Option(
      names = "--export-register",
      paramLabel = "DIR",
      description = "Write the whole register as CSV to a folder, and verify it.")
  private Optional<Path> exportRegister = Optional.empty();

  @Override
  public Integer call() {
    MonthEndRequest request =
        new MonthEndRequest(
            book.book, month, book.out, book.register(), includeEarlier, correct, exportRegister);
    return new MonthEndRun(request, book.machine(), Terminal.ofProcess()).run();
  }
}
