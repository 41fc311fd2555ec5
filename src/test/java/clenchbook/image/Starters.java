package clenchbook.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a person starts: the launcher, and what a double click runs. */
final class Starters {
  private Starters() {}

  static void write(Place place) throws IOException {
    Path from = place.sources();
    if (Place.kind() != Place.Kind.WINDOWS) {
      Place.copy(from.resolve("unix"), place.image());
    }
    Place.copy(from.resolve(Place.kind().folder()), place.image());
    Place.copy(from.resolve("icon"), place.image().resolve("icon"));
    Files.copy(
        place.project().resolve("docs").resolve("without-java.md"),
        place.image().resolve("READ ME.txt"));
    Path launcher = place.image().resolve("bin").resolve("clenchbook");
    if (Files.exists(launcher)) {
      String text =
          Files.readAllLines(launcher).stream()
              .map(line -> line.startsWith("exec ") ? Started.inLauncher(line) : line)
              .collect(Collectors.joining("\n", "", "\n"));
      Files.writeString(launcher, text);
    }
    mayBeRun(place.image());
  }

  private static void mayBeRun(Path image) throws IOException {
    try (Stream<Path> bin = Files.list(image.resolve("bin"));
        Stream<Path> top = Files.list(image)) {
      for (Path file :
          Stream.concat(bin, top.filter(file -> file.toString().endsWith(".command"))).toList()) {
        if (!file.toFile().setExecutable(true, false)) {
          throw new IOException("may not be made a program: " + file);
        }
      }
    }
  }
}
