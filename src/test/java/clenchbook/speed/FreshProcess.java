package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A whole process, from its start to its end. The scratch folder is emptied before, outside the
 * time; an end with an unexpected exit code ends the measuring too.
 *
 * @param name for the one who waits
 * @param command program and arguments
 * @param environment what is set beside this process's own environment
 */
record FreshProcess(
    Places places, String name, List<String> command, Map<String, String> environment) {
  /** Settings that would come from outside; both sides run without. */
  private static final List<String> FROM_OUTSIDE =
      List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS");

  /** Seconds of wall clock, and what was said. */
  record Ended(double seconds, String said) {}

  FreshProcess {
    command = List.copyOf(command);
    environment = Map.copyOf(environment);
  }

  FreshProcess(Places places, String name, List<String> command) {
    this(places, name, command, Map.of());
  }

  /** The same with something more in its environment. */
  FreshProcess with(Map<String, String> more) {
    Map<String, String> both = new HashMap<>(environment);
    both.putAll(more);
    return new FreshProcess(places, name, command, both);
  }

  /** Runs it once. */
  Ended run() throws IOException, InterruptedException {
    places.emptyScratch();
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.redirectOutput(places.said().toFile());
    builder.environment().keySet().removeAll(FROM_OUTSIDE);
    builder.environment().putAll(environment);
    long start = System.nanoTime();
    int code = builder.start().waitFor();
    double seconds = (System.nanoTime() - start) / 1e9;
    String said = Files.readString(places.said()).strip();
    if (code != 0) {
      throw new IOException(name + " ended with exit code " + code + ": " + command + "\n" + said);
    }
    Progress.say("%7.3f s  %s", seconds, name);
    return new Ended(seconds, said);
  }
}
