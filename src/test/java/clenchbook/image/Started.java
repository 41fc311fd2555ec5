package clenchbook.image;

import java.util.List;

/**
 * How the image's Java is pointed to the jar. Since Java 19 an archive is good wherever the jar was
 * moved with it. Java 17 wants the very name that the jar had when the archive was made: on Linux
 * that of an open file is the same everywhere. Elsewhere such an archive lies unused.
 */
final class Started {
  private static final int FINDS_A_MOVED_JAR = 19;
  private static final String MAIN = "clenchbook.cli.Clenchbook";
  private static final String OPEN_FILE = "/proc/self/fd/9";

  private Started() {}

  private static boolean asOpenFile() {
    return Runtime.version().feature() < FINDS_A_MOVED_JAR && Place.kind() == Place.Kind.LINUX;
  }

  /** What stands between Java's settings and the program's arguments. */
  static List<String> arguments(Place place) {
    return asOpenFile() ? List.of("-cp", OPEN_FILE, MAIN) : List.of("-jar", place.jar().toString());
  }

  /** The same in the launcher's words; its line ends with what opens the file, if anything. */
  static String inLauncher(String line) {
    return asOpenFile()
        ? line.replace("-jar \"$home/lib/clenchbook.jar\"", "-cp " + OPEN_FILE + " " + MAIN)
            .replace("\"$@\"", "\"$@\" 9<\"$home/lib/clenchbook.jar\"")
        : line;
  }

  /** What opens the jar under that name for the command that follows; nothing where none is. */
  static List<String> opening(Place place) {
    return asOpenFile()
        ? List.of("/bin/sh", "-c", "exec \"$@\" 9<\"$0\"", place.jar().toString())
        : List.of();
  }
}
