package clenchbook.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The runtime in the image, linked from the JDK that runs the build. */
final class OwnRuntime {
  /**
   * What jdeps names for the program and its libraries, and what no class file names: the number
   * formats of the five languages, elliptic curves for TLS, old character sets, zip files.
   */
  private static final List<String> MODULES =
      List.of(
          "java.base",
          "java.desktop",
          "java.scripting",
          "java.security.jgss",
          "java.security.sasl",
          "java.sql.rowset",
          "java.xml.crypto",
          "jdk.xml.dom",
          "jdk.unsupported",
          "jdk.localedata",
          "jdk.crypto.ec",
          "jdk.charsets",
          "jdk.zipfs");

  /** For windows on a screen and sound, which the program has not. */
  private static final String UNUSED =
      "**libawt_xawt.so,**libsplashscreen.*,**splashscreen.dll,**libjsound.*,**jsound.dll";

  private OwnRuntime() {}

  static void link(Place place) throws IOException, InterruptedException {
    Tool.run(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "jlink").toString(),
            "--add-modules",
            String.join(",", MODULES),
            "--include-locales=en,de,fr,es,nl",
            "--strip-debug",
            "--no-header-files",
            "--no-man-pages",
            "--compress=" + (Runtime.version().feature() < 21 ? "2" : "zip-9"),
            "--exclude-files=" + UNUSED,
            "--output",
            place.runtime().toString()));
    stripSymbols(place.runtime());
  }

  /**
   * Takes the tables for debuggers out of the machine code too, a sixth of the virtual machine.
   * Only on Linux: on macOS it would break the signature that the system asks for.
   */
  private static void stripSymbols(Path runtime) throws IOException, InterruptedException {
    Optional<Path> strip = Tool.found("strip");
    if (Place.kind() != Place.Kind.LINUX || strip.isEmpty()) {
      return;
    }
    List<String> command =
        new ArrayList<>(List.of(strip.orElseThrow().toString(), "--strip-unneeded"));
    try (Stream<Path> all = Files.walk(runtime.resolve("lib"))) {
      for (Path file : all.filter(file -> file.toString().endsWith(".so")).toList()) {
        if (file.toFile().setWritable(true)) {
          command.add(file.toString());
        }
      }
    }
    Tool.run(command);
  }
}
