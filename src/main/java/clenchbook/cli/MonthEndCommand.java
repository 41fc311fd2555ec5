package clenchbook.cli;

import clenchbook.commands.MonthEndRequest;
import clenchbook.commands.MonthEndRun;
import clenchbook.commands.opening.Browser;
import clenchbook.commands.opening.LastFullMonth;
import clenchbook.commands.opening.OnlyBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.Terminal;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code month-end}. */
@Command(
    description =
        "Costs, invoices, statements, margins, comparisons, workload, stock, due list, problems.",
    mixinStandardHelpOptions = true)
final class MonthEndCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "BOOK",
      description = "The workbook; may be left out where the folder holds just one.")
  private Optional<Path> named = Optional.empty();

  @Mixin private final RunOptions run = new RunOptions();

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Option(
      names = "--month",
      paramLabel = "YYYY-MM",
      description = "The month; default: the last full one before the day of the run.")
  private Optional<YearMonth> month = Optional.empty();

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

  @Option(names = "--open", description = "Open the month's page in the browser afterwards.")
  private boolean open;

  @Override
  public Integer call() {
    Terminal terminal = run.terminal();
    Path book = named.orElseGet(() -> only(terminal));
    YearMonth asked = LastFullMonth.of(month, run.machine().today(), terminal);
    MonthEndRequest request =
        new MonthEndRequest(
            book, asked, run.out, run.register(), includeEarlier, correct, exportRegister);
    int code = new MonthEndRun(request, run.machine(), terminal).run();
    if (open) {
      new Browser(terminal)
          .open(Places.reports(book, run.out).resolve(asked.toString()).resolve("index.html"));
    }
    return code;
  }

  private Path only(Terminal terminal) {
    OnlyBook.Found found = OnlyBook.in(Path.of(""));
    Path book = found.book().orElseThrow(() -> WrongUsage.because(spec.commandLine(), found.why()));
    terminal.say(Message.of("cli.onlyBook", book.toString()));
    return book;
  }
}
