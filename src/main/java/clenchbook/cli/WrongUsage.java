package clenchbook.cli;

import clenchbook.problem.NearestName;
import clenchbook.texts.Message;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command line, in plain words, with the nearest right word. */
final class WrongUsage {
  private WrongUsage() {}

  /** A command line that can be parsed but not meant. */
  private static final class Unmeant extends ParameterException {
    private static final long serialVersionUID = 1L;

    private final transient Message why;

    Unmeant(CommandLine line, Message why) {
      super(line, why.toString());
      this.why = why;
    }
  }

  /**
   * A fault of the command line that only the command sees.
   *
   * @param line the command
   * @param why one line
   * @return what to throw
   */
  static ParameterException because(CommandLine line, Message why) {
    return new Unmeant(line, why);
  }

  /**
   * Says it.
   *
   * @param fault what the command line complains of
   * @param commands the names of all commands
   * @return one line
   */
  static Message of(ParameterException fault, List<String> commands) {
    if (fault instanceof Unmeant unmeant) {
      return unmeant.why;
    }
    if (fault.getCause() instanceof Unreadable unreadable) {
      return unreadable(fault, unreadable.message());
    }
    if (fault instanceof MissingParameterException missing && missing.getMissing().size() == 1) {
      return missing(missing.getMissing().get(0));
    }
    if (fault instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(unmatched, commands);
    }
    return asSaid(fault);
  }

  /** What the parser of command lines says itself, in English. */
  private static Message asSaid(ParameterException fault) {
    return Message.literal(String.valueOf(fault.getMessage()).lines().findFirst().orElse(""));
  }

  private static Message unreadable(ParameterException fault, Message why) {
    ArgSpec argument = fault.getArgSpec();
    return argument instanceof OptionSpec option
        ? Message.of("cli.invalidOption", option.longestName(), why)
        : Message.of("cli.invalidParameter", argument.paramLabel(), why);
  }

  private static Message missing(ArgSpec argument) {
    if (argument instanceof OptionSpec option) {
      return Message.of(
          argument.required() ? "cli.missingOption" : "cli.missingValue",
          option.longestName(),
          argument.paramLabel());
    }
    return Message.of("cli.missing", argument.paramLabel());
  }

  private static Message unmatched(UnmatchedArgumentException fault, List<String> commands) {
    String word = fault.getUnmatched().get(0);
    boolean command = fault.getCommandLine().getParent() == null;
    if (word.startsWith("-")) {
      return option(word, command, fault);
    }
    return command ? command(word, commands) : Message.of("cli.tooMuch", word);
  }

  private static Message command(String word, List<String> commands) {
    return NearestName.findSpelled(word, commands)
        .map(near -> Message.of("cli.noCommandNear", word, near))
        .orElseGet(() -> Message.of("cli.noCommand", word, List.copyOf(commands)));
  }

  private static Message option(String word, boolean atFirst, UnmatchedArgumentException fault) {
    if (atFirst) {
      return Message.of("cli.optionFirst", word);
    }
    String name = word.split("=", 2)[0];
    return NearestName.findSpelled(
            name, fault.getCommandLine().getCommandSpec().optionsMap().keySet())
        .map(near -> Message.of("cli.noOptionNear", name, near))
        .orElseGet(() -> Message.of("cli.noOption", name));
  }
}
