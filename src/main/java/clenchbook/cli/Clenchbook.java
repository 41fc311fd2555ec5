package clenchbook.cli;

import clenchbook.commands.opening.Terminal;
import clenchbook.commands.printing.LoadAhead;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program: one command for each job. */
@Command(
    name = "clenchbook",
    description = "cli.help.program",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", "cli.help.exitCodes", "cli.help.onlyAids"})
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
          new Named("payments", PaymentsCommand::new),
          new Named("backup", BackupCommand::new),
          new Named("restore", RestoreCommand::new));

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
    Surroundings.settle();
    // Java takes its time over the first number of a language: the command line is set up
    // meanwhile.
    CompletableFuture<Optional<Message>> missing =
        CompletableFuture.supplyAsync(NumberFormats::missing);
    // A thread that helps has its fault told, if it matters, by the one that waits for it.
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> trace(fault, System.err));
    LoadAhead ahead =
        arguments.length > 1 && PRINTING.contains(arguments[0])
            ? LoadAhead.begin()
            : LoadAhead.nothing();
    CommandLine line = commandLine(arguments);
    int code = missing.join().map(Clenchbook::refused).orElseGet(() -> execute(line, arguments));
    // What is being loaded must be at rest before the files it reads are cleaned up.
    ahead.finish();
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @param arguments the command line
   * @return its exit code
   */
  public static int execute(String... arguments) {
    return execute(commandLine(arguments), arguments);
  }

  private static int refused(Message why) {
    Terminal.ofProcess().warn(why);
    return COULD_NOT_RUN;
  }

  private static int execute(CommandLine line, String... arguments) {
    try {
      return line.execute(arguments);
    } catch (Error fault) {
      // The command line handles exceptions alone; an error of the machine is told like them.
      return couldNotRun(fault, line);
    }
  }

  /** The command line: of the one command that is named, or of all where none is. */
  static CommandLine commandLine(String... arguments) {
    String first = arguments.length == 0 ? "" : arguments[0];
    List<Named> asked = COMMANDS.stream().filter(each -> each.name().equals(first)).toList();
    CommandLine line = new CommandLine(new Clenchbook());
    (asked.isEmpty() ? COMMANDS : asked)
        .forEach(each -> line.addSubcommand(each.name(), each.command().get()));
    return HelpTexts.speaking(Values.register(line))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler((fault, given) -> wrongUsage(fault))
        .setExecutionExceptionHandler((fault, command, parsed) -> couldNotRun(fault, command));
  }

  private static int wrongUsage(CommandLine.ParameterException fault) {
    PrintWriter err = fault.getCommandLine().getErr();
    Texts texts = RunOptions.terminalOf(fault.getCommandLine()).texts();
    Message wrong = WrongUsage.of(fault, COMMANDS.stream().map(Named::name).toList());
    err.println(texts.say(wrong));
    String help = fault.getCommandLine().getCommandSpec().qualifiedName() + " --help";
    err.println(texts.say("cli.try", help));
    return WRONG_USAGE;
  }

  private static int couldNotRun(Throwable fault, CommandLine line) {
    line.getErr().println(CouldNotRun.of(fault, RunOptions.terminalOf(line).texts()));
    line.getErr().flush();
    trace(fault, System.err);
    return COULD_NOT_RUN;
  }

  /** For who looks for a fault of the program; nobody else ever sees where in it one was. */
  private static void trace(Throwable fault, PrintStream err) {
    if (System.getenv("CLENCHBOOK_TRACE") != null) {
      fault.printStackTrace(err);
    }
  }

  @Override
  public void run() {
    throw WrongUsage.because(spec.commandLine(), Message.of("cli.whichCommand"));
  }
}
