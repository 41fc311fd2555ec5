package clenchbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Texts;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;

class HelpTextsTest {
  @Test
  void every_command_and_argument_is_described_by_a_text() {
    List<String> all = HelpInWords.all(InEnglish.TEXTS);
    assertEquals(1 + Clenchbook.commandLine().getSubcommands().size(), all.size());
    all.forEach(help -> assertFalse(help.contains("cli."), help));
    for (CommandLine command : Clenchbook.commandLine().getSubcommands().values()) {
      for (ArgSpec argument : command.getCommandSpec().args()) {
        assertTrue(
            argument.descriptionKey().matches("(cli|mixinStandardHelpOptions)\\..*"),
            command.getCommandName() + " " + argument.paramLabel() + ": no key");
      }
    }
  }

  @Test
  void help_says_what_an_argument_is_by_default() {
    assertTrue(help("send").contains("Pause between two mails; default 1."), help("send"));
  }

  @Test
  void a_per_cent_sign_and_another_language_come_through() {
    Texts texts =
        Texts.of(
            "de",
            "DE",
            (language, key) ->
                key.equals("cli.help.month")
                    ? Optional.of("100 % der Vorgabe")
                    : TextFiles.OWN.find(Texts.ENGLISH, key));
    assertTrue(
        HelpInWords.all(texts).stream().anyMatch(help -> help.contains("100 % der Vorgabe")));
  }

  private static String help(String command) {
    return HelpInWords.all(InEnglish.TEXTS).stream()
        .filter(help -> help.startsWith("Usage: clenchbook " + command))
        .findFirst()
        .orElseThrow();
  }
}
