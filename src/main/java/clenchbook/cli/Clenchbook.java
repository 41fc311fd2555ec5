package clenchbook.cli;

import clenchbook.commands.opening.RunFault;
import clenchbook.commands.printing.LoadAhead;
import clenchbook.register.RegisterFault;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program: one command for each job. */
@Command(
    name = "clenchbook",
    description = "A farrier's month and year from one workbook.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Exit codes: 0 done; 1 done, but rows are held back; 2 could not run; 64 wrong usage.",
      "The workbook is only ever read. Tax and body figures are summaries and aids, not advice."
    })
public final class Clenchbook implements Runnable {
  /** Could not run. */
  public static final int COULD_NOT_RUN = 2;

  /** Wrong usage. */
  public static final int WRONG_USAGE = 64;

  private record Named(String name, Supplier<Object> command) {}

  private static final List<Named> COMMANDS =
      List.of(
          new Named("new", NewCommand::new),
          new Named("check", CheckCommand::new),
          new Named("month-end", MonthEndCommand::new),
          new Named("send", SendCommand::new),
          new Named("year-end", YearEndCommand::new),
          new Named("compare", CompareCommand::new),
          new Named("payments", PaymentsCommand::new));

  private static final Set<String> PRINTING = Set.of("month-end", "send", "year-end", "compare");

  @CommandLine.Spec
  @SuppressWarnings("NullAway.Init") // set by the command line
  private CommandLine.Model.CommandSpec spec;

  /**
   * Runs one command and ends the process with its exit code.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    if (arguments.length > 1 && PRINTING.contains(arguments[0])) {
      LoadAhead.begin();
    }
    System.exit(execute(arguments));
  }

  /**
   * Runs one command.
   *
   * @param arguments the command line
   * @return its exit code
   */
  public static int execute(String... arguments) {
    return commandLine(arguments).execute(arguments);
  }

  /** The command line: of the one command that is named, or of all where none is. */
  static CommandLine commandLine(String... arguments) {
    String first = arguments.length == 0 ? "" : arguments[0];
    List<Named> asked = COMMANDS.stream().filter(each -> each.name().equals(first)).toList();
    CommandLine line = new CommandLine(new Clenchbook());
    (asked.isEmpty() ? COMMANDS : asked)
        .forEach(each -> line.addSubcommand(each.name(), each.command().get()));
    return line.registerConverter(
            YearMonth.class, text -> parsed(text, YearMonth::parse, "2026-10"))
        .registerConverter(LocalDate.class, text -> parsed(text, LocalDate::parse, "2026-10-31"))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(Clenchbook::wrongUsage)
        .setExecutionExceptionHandler(Clenchbook::couldNotRun);
  }

  private static <T> T parsed(String text, Function<String, T> parse, String example) {
    try {
      return parse.apply(text);
    } catch (DateTimeParseException e) {
      throw new CommandLine.TypeConversionException(
          "'" + text + "' can't be read; expected such as " + example);
    }
  }

  private static int wrongUsage(CommandLine.ParameterException fault, String[] arguments) {
    PrintWriter err = fault.getCommandLine().getErr();
    err.println(fault.getMessage());
    err.println("Try: " + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return WRONG_USAGE;
  }

  private static int couldNotRun(
      Exception fault, CommandLine line, CommandLine.ParseResult parsed) {
    boolean expected = fault instanceof RunFault || fault instanceof RegisterFault;
    String message = String.valueOf(fault.getMessage()).lines().findFirst().orElse("");
    line.getErr()
        .println(
            expected
                ? message
                : "something went wrong that should not (" + fault + "); nothing was half-written");
    if (System.getenv("CLENCHBOOK_TRACE") != null) {
      fault.printStackTrace(line.getErr());
    }
    return COULD_NOT_RUN;
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "Which command?");
  }
}
