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
@Command(description = "cli.command.monthEnd", mixinStandardHelpOptions = true)
final class MonthEndCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "BOOK",
      descriptionKey = "cli.help.onlyBook")
  private Optional<Path> named = Optional.empty();

  @Mixin private final RunOptions run = new RunOptions();

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Option(names = "--month", paramLabel = "YYYY-MM", descriptionKey = "cli.help.month")
  private Optional<YearMonth> month = Optional.empty();

  @Option(names = "--include-earlier", descriptionKey = "cli.help.includeEarlier")
  private boolean includeEarlier;

  @Option(names = "--correct", paramLabel = "NUMBER", descriptionKey = "cli.help.correct")
  private Optional<String> correct = Optional.empty();

  @Option(
      names = "--export-register",
      paramLabel = "DIR",
      descriptionKey = "cli.help.exportRegister")
  private Optional<Path> exportRegister = Optional.empty();

  @Option(names = "--open", descriptionKey = "cli.help.open")
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
