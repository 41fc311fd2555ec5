package clenchbook.commands.opening;

import java.io.File;
import java.util.Optional;

/**
 * How the person started the program, so that what they are told to type next works as it stands.
 *
 * @param typed what stands before a command's name, with its path
 * @param plain the same without a path, for a workbook that may be opened elsewhere
 */
public record StartedAs(String typed, String plain) {
  /** Where the launchers say how they were called. */
  public static final String VARIABLE = "CLENCHBOOK_STARTED";

  private static final String NAME = "clenchbook";

  /** As this process was started. */
  public static StartedAs ofProcess() {
    return of(
        Optional.ofNullable(System.getenv(VARIABLE)),
        Optional.ofNullable(System.getProperty("jpackage.app-path")),
        System.getProperty("java.class.path", ""));
  }

  /**
   * What the person would type.
   *
   * @param launcher as the launcher was called; empty where none was
   * @param installed the installed program's own file; empty where there is none
   * @param classPath the class path: a single jar after {@code java -jar}
   */
  static StartedAs of(Optional<String> launcher, Optional<String> installed, String classPath) {
    Optional<String> program = launcher.or(() -> installed).filter(path -> !path.isBlank());
    if (program.isPresent()) {
      return new StartedAs(quoted(program.get()), name(program.get()));
    }
    boolean oneJar = classPath.endsWith(".jar") && !classPath.contains(File.pathSeparator);
    return oneJar
        ? new StartedAs("java -jar " + quoted(classPath), "java -jar " + name(classPath))
        : new StartedAs(NAME, NAME);
  }

  private static String name(String path) {
    String slashed = path.replace('\\', '/');
    return slashed.substring(slashed.lastIndexOf('/') + 1);
  }

  /** A word as it is typed: between quotes where it holds a blank. */
  static String quoted(String path) {
    return path.contains(" ") ? '"' + path + '"' : path;
  }

  /** A command with a workbook, as it is typed. */
  public String line(String command, String book) {
    return typed + " " + command + " " + quoted(book);
  }
}
