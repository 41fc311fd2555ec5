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
@Command(
    description =
        "Tax summary for a preparer, mileage log, journal, margins and workload of the year.",
    mixinStandardHelpOptions = true)
final class YearEndCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Option(
      names = "--year",
      paramLabel = "YYYY",
      description =
          "The year in which the tax year starts; default: the last one that ended before the day"
              + " of the run.")
  private Optional<Integer> year = Optional.empty();

  @Option(names = "--quarter", paramLabel = "N", description = "Only this quarter of it, 1 to 4.")
  private Optional<Integer> quarter = Optional.empty();

  @Option(
      names = "--calendar-quarters",
      description =
          "Quarters from the first of a month: in the United Kingdom to 30 June, 30 September, 31"
              + " December and 31 March.")
  private boolean calendarQuarters;

  @Option(
      names = "--rates",
      paramLabel = "DIR",
      description = "Rate files laid over the program's; default: 'rates' beside the workbook.")
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
