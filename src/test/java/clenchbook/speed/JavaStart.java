package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A Java program with its settings.
 *
 * @param name for the one who waits
 * @param settings of the virtual machine
 * @param program class path and main class, or the jar
 */
record JavaStart(Places places, String name, List<String> settings, List<String> program) {
  JavaStart {
    settings = List.copyOf(settings);
    program = List.copyOf(program);
  }

  /** The packaged program. */
  static JavaStart ofProgram(Places places, List<String> settings) {
    return new JavaStart(places, "ours", settings, List.of("-jar", places.jar().toString()));
  }

  /** A class of the tests, on the packaged program. */
  static JavaStart of(Places places, Class<?> main, List<String> settings) {
    List<String> program = List.of("-cp", places.floorsPath(), main.getName());
    return new JavaStart(places, main.getSimpleName(), settings, program);
  }

  /** The same with these settings too. */
  JavaStart set(String... more) {
    List<String> both = new ArrayList<>(settings);
    both.addAll(List.of(more));
    return new JavaStart(places, name, both, program);
  }

  /** A process with these arguments. */
  FreshProcess with(List<String> arguments) {
    List<String> command = new ArrayList<>();
    command.add(java());
    command.addAll(settings);
    command.addAll(program);
    command.addAll(arguments);
    return new FreshProcess(places, name, command);
  }

  /**
   * The same, started from an archive of the classes that a run with these arguments loads, as the
   * launcher makes it. A last run insists on the archive, so that none is measured that Java passes
   * over.
   */
  JavaStart archived(List<String> arguments) throws IOException, InterruptedException {
    Path folder = Files.createDirectories(places.folder().resolve("archives"));
    Path list = folder.resolve(name + ".list");
    Path archive = folder.resolve(name + ".jsa");
    Files.deleteIfExists(archive);
    set("-XX:DumpLoadedClassList=" + list).with(arguments).run();
    set("-Xshare:dump", "-XX:SharedClassListFile=" + list, "-XX:SharedArchiveFile=" + archive)
        .with(List.of())
        .run();
    JavaStart archived = set("-XX:SharedArchiveFile=" + archive);
    archived.set("-Xshare:on").with(arguments).run();
    return archived;
  }

  static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }
}
