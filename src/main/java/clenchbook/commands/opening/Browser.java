package clenchbook.commands.opening;

import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Opens a page in the browser, as a double click on it would. */
public final class Browser {
  private final String system;
  private final Map<String, String> environment;
  private final Terminal terminal;

  /**
   * The browser of this machine.
   *
   * @param terminal told where the page lies when nothing opens it
   */
  public Browser(Terminal terminal) {
    this(System.getProperty("os.name", ""), System.getenv(), terminal);
  }

  Browser(String system, Map<String, String> environment, Terminal terminal) {
    this.system = system.toLowerCase(Locale.ROOT);
    this.environment = Map.copyOf(environment);
    this.terminal = terminal;
  }

  /**
   * Opens a page; a machine without a browser is no fault.
   *
   * @param page a file
   */
  public void open(Path page) {
    Path whole = page.toAbsolutePath();
    for (List<String> command : commands(whole)) {
      if (started(command)) {
        return;
      }
    }
    terminal.say(Message.of("commands.openIt", whole.toString()));
  }

  /** What may open it, the likeliest first. */
  List<List<String>> commands(Path page) {
    String file = page.toString();
    if (system.startsWith("windows")) {
      return List.of(List.of("rundll32", "url.dll,FileProtocolHandler", file));
    }
    if (system.startsWith("mac")) {
      return List.of(List.of("/usr/bin/open", file));
    }
    List<List<String>> commands = new ArrayList<>();
    String own = environment.getOrDefault("BROWSER", "");
    if (!own.isBlank()) {
      commands.add(List.of(own.split(":")[0], file));
    }
    for (String name : List.of("xdg-open", "sensible-browser", "x-www-browser")) {
      Path program = Path.of("/usr/bin", name);
      if (Files.isExecutable(program)) {
        commands.add(List.of(program.toString(), file));
      }
    }
    return commands;
  }

  private static boolean started(List<String> command) {
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException notThere) {
      return false;
    }
  }
}
