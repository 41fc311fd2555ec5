package clenchbook.image;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Another program, run to its end; one that fails ends the build with what it said. */
final class Tool {
  private Tool() {}

  static String run(List<String> command) throws IOException, InterruptedException {
    return run(command, Set.of(0));
  }

  /** The same where other exit codes are fine too. */
  static String run(List<String> command, Set<Integer> fine)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    // Settings from outside would stand in the archive too, or be said in the midst of things.
    builder
        .environment()
        .keySet()
        .removeAll(List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS"));
    Process process = builder.start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    if (!fine.contains(code)) {
      throw new IOException("exit code " + code + " of " + command + "\n" + said);
    }
    return said;
  }

  /** A program on the path, if it is there. */
  static Optional<Path> found(String name) {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .filter(folder -> !folder.isBlank())
        .map(folder -> Path.of(folder, name))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
