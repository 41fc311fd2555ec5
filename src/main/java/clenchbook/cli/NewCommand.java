package clenchbook.cli;

import clenchbook.commands.NewBook;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.StartedAs;
import clenchbook.commands.opening.Terminal;
import clenchbook.reading.starter.StarterPlan;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code new}. */
@Command(description = "cli.command.new", mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "BOOK", descriptionKey = "cli.help.newBook")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path book;

  @Option(names = "--language", paramLabel = "LANGUAGE", descriptionKey = "cli.help.language")
  private Optional<String> language = Optional.empty();

  @Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandSpec spec;

  @Override
  public Integer call() {
    Machine machine = Machine.here(Optional.empty());
    String wanted =
        language.map(this::known).orElseGet(() -> StarterPlan.languageOf(machine.locale()));
    YearMonth month = YearMonth.from(machine.today());
    return NewBook.write(book, wanted, StartedAs.ofProcess(), month, Terminal.ofProcess());
  }

  private String known(String given) {
    String code = given.toLowerCase(Locale.ROOT);
    if (!StarterPlan.LANGUAGES.contains(code)) {
      throw WrongUsage.because(
          spec.commandLine(),
          Message.of("cli.noStarter", given, List.copyOf(StarterPlan.LANGUAGES)));
    }
    return code;
  }
}
