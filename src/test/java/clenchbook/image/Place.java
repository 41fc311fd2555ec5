package clenchbook.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Where things lie while the image is built.
 *
 * @param project the project's folder
 * @param version the program's version
 */
record Place(Path project, String version) {
  /** What the whole folder may weigh, in bytes: 120 MB of a million bytes each. */
  static final long LIMIT = 120_000_000;

  private static final String SYSTEM = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);

  /** The machine that the image is for: the one that builds it. */
  enum Kind {
    LINUX,
    MAC,
    WINDOWS;

    /** Its folder below {@code src/main/image}. */
    String folder() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static Kind kind() {
    if (SYSTEM.startsWith("windows")) {
      return Kind.WINDOWS;
    }
    return SYSTEM.startsWith("mac") ? Kind.MAC : Kind.LINUX;
  }

  Path target() {
    return project.resolve("target");
  }

  Path folder() {
    return target().resolve("image");
  }

  /** The image itself. */
  Path image() {
    return folder().resolve("clenchbook");
  }

  Path runtime() {
    return image().resolve("runtime");
  }

  Path java() {
    return runtime().resolve("bin").resolve(kind() == Kind.WINDOWS ? "java.exe" : "java");
  }

  Path lib() {
    return image().resolve("lib");
  }

  Path jar() {
    return lib().resolve("clenchbook.jar");
  }

  Path archive() {
    return lib().resolve("classes.jsa");
  }

  /** What is laid into images as it stands. */
  Path sources() {
    return project.resolve("src").resolve("main").resolve("image");
  }

  /** For what only the build needs. */
  Path work() {
    return folder().resolve("work");
  }

  /** Bytes of all files below a folder. */
  static long bytes(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      long sum = 0;
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        sum += Files.size(file);
      }
      return sum;
    }
  }

  /** Removes a folder with all in it, if it is there. */
  static void clear(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path each : all) {
      Files.delete(each);
    }
  }

  /** Copies a folder's files, with who may run them. */
  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.toList()) {
        Path there = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(there);
        } else {
          Files.copy(each, there, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
  }
}
