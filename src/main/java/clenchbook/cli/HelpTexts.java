package clenchbook.cli;

import clenchbook.texts.Texts;
import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * Says the help of a command in the machine's language. Commands and their arguments are described
 * by the keys of texts; they become sentences when help is asked for, since no other run needs
 * them.
 */
final class HelpTexts extends ResourceBundle {
  /** The parser's own keys for the options that every command has. */
  private static final String HELP = "mixinStandardHelpOptions.help";

  private static final String VERSION = "mixinStandardHelpOptions.version";

  /** Where the parser puts the value that an argument has by default. */
  private static final String BY_DEFAULT = "${DEFAULT-VALUE}";

  private final Map<String, String> texts;

  private HelpTexts(Map<String, String> texts) {
    this.texts = texts;
  }

  /** Has a command's help said in the language that its terminal speaks. */
  static CommandLine speaking(CommandLine line) {
    return line.setHelpFactory(
        (spec, colours) -> of(spec, colours, RunOptions.terminalOf(line).texts()));
  }

  /**
   * The help of a command.
   *
   * @param spec the command, described by keys
   * @param colours how it looks
   * @param texts the language
   * @return its help, and that of the commands below it
   */
  static Help of(CommandSpec spec, ColorScheme colours, Texts texts) {
    Map<String, String> said = new TreeMap<>();
    said.put(HELP, said(texts, "cli.help.help"));
    said.put(VERSION, said(texts, "cli.help.version"));
    for (ArgSpec argument : spec.args()) {
      if (argument.descriptionKey().startsWith("cli.")) {
        said.put(argument.descriptionKey(), said(texts, argument.descriptionKey()));
      }
    }
    UsageMessageSpec usage = spec.usageMessage();
    usage.synopsisHeading(said(texts, "cli.help.usage") + " ");
    usage.commandListHeading(said(texts, "cli.help.commands") + "%n");
    usage.description(said(texts, usage.description()));
    usage.footer(said(texts, usage.footer()));
    spec.resourceBundle(new HelpTexts(said));
    return new Help(spec, colours);
  }

  /** What is a key becomes its text; the rest is said already or blank. */
  private static String[] said(Texts texts, String... lines) {
    return Arrays.stream(lines)
        .map(line -> line.startsWith("cli.") ? said(texts, line) : line)
        .toArray(String[]::new);
  }

  /** The parser reads a per cent sign as the beginning of a format. */
  private static String said(Texts texts, String key) {
    return texts.say(key, BY_DEFAULT).replace("%", "%%");
  }

  @Override
  protected @Nullable Object handleGetObject(String key) {
    return texts.get(key);
  }

  @Override
  public Enumeration<String> getKeys() {
    return Collections.enumeration(texts.keySet());
  }
}
