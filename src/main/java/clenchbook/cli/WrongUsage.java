package clenchbook.cli;

import clenchbook.problem.NearestName;
import java.util.List;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command line, in plain words, with the nearest right word. */
final class WrongUsage {
  private WrongUsage() {}

  /**
   * Says it.
   *
   * @param fault what the command line complains of
   * @param commands the names of all commands
   * @return one line
   */
  static String of(ParameterException fault, List<String> commands) {
    if (fault instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      String word = unmatched.getUnmatched().get(0);
      boolean command = unmatched.getCommandLine().getParent() == null;
      return word.startsWith("-")
          ? option(word, command, unmatched)
          : command ? command(word, commands) : tooMuch(word);
    }
    return String.valueOf(fault.getMessage()).lines().findFirst().orElse("");
  }

  private static String command(String word, List<String> commands) {
    return "there is no command '"
        + word
        + "'; "
        + NearestName.findSpelled(word, commands)
            .map(near -> "did you mean " + near + "?")
            .orElse("there are " + String.join(", ", commands));
  }

  private static String option(String word, boolean atFirst, UnmatchedArgumentException fault) {
    if (atFirst) {
      return "'" + word + "' stands where the command should; the command comes first";
    }
    String name = word.split("=", 2)[0];
    return "there is no option '"
        + name
        + "'"
        + NearestName.findSpelled(
                name, fault.getCommandLine().getCommandSpec().optionsMap().keySet())
            .map(near -> "; did you mean " + near + "?")
            .orElse("");
  }

  private static String tooMuch(String word) {
    return "'" + word + "' is one word too many; a name with blanks in it stands between quotes";
  }
}
