package clenchbook.cli;

import clenchbook.commands.YearEndRequest;
import clenchbook.commands.YearEndRun;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command {@code year-end}. */
@Command(description = "cli.command.yearEnd", mixinStandardHelpOptions = true)
final class YearEndCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Option(names = "--year", paramLabel = "YYYY", descriptionKey = "cli.help.year")
  private Optional<Integer> year = Optional.empty();

  @Option(names = "--quarter", paramLabel = "N", descriptionKey = "cli.help.quarter")
  private Optional<Integer> quarter = Optional.empty();

  @Option(names = "--calendar-quarters", descriptionKey = "cli.help.calendarQuarters")
  private boolean calendarQuarters;

  @Option(names = "--rates", paramLabel = "DIR", descriptionKey = "cli.help.rates")
  private Optional<Path> rates = Optional.empty();

  @Override
  public Integer call() {
    if (year.filter(n -> n < 1900 || n > 9998).isPresent()
        || quarter.filter(n -> n < 1 || n > 4).isPresent()) {
      throw WrongUsage.because(spec.commandLine(), Message.of("cli.yearAndQuarter"));
    }
    YearEndRequest request =
        new YearEndRequest(
            book.book, year, quarter, calendarQuarters, book.out, book.register(), rates);
    return new YearEndRun(request, book.machine(), book.terminal()).run();
  }
}
