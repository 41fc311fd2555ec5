package clenchbook.cli;

import clenchbook.texts.Texts;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** The help of the program and of each command, in any language, for tests of other packages. */
public final class HelpInWords {
  private HelpInWords() {}

  /** The help texts: the program's own, then those of its commands. */
  public static List<String> all(Texts texts) {
    CommandLine program =
        Clenchbook.commandLine()
            .setHelpFactory((spec, colours) -> HelpTexts.of(spec, colours, texts));
    List<String> all = new ArrayList<>(List.of(program.getUsageMessage()));
    program.getSubcommands().values().forEach(command -> all.add(command.getUsageMessage()));
    return all;
  }
}
