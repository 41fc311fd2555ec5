package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * Packs the floors' classes, with the others of the tests that some of them use: a class-data
 * archive takes no classes from a folder.
 */
final class FloorsJar {
  private FloorsJar() {}

  static void make(Places places) throws IOException {
    Path classes = places.target().resolve("test-classes");
    Files.createDirectories(places.folder());
    try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(places.floors()))) {
      for (Path file : files(classes.resolve("clenchbook"))) {
        String name = classes.relativize(file).toString().replace('\\', '/');
        JarEntry entry = new JarEntry(name);
        entry.setTime(0);
        jar.putNextEntry(entry);
        Files.copy(file, jar);
        jar.closeEntry();
      }
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(".class")).sorted().toList();
    }
  }
}
