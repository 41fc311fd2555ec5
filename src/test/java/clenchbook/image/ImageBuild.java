package clenchbook.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Builds {@code target/image/clenchbook} for the machine that it runs on, from the packaged jar and
 * the JDK that runs it: {@code mvn -q -DskipTests package -Pimage}.
 */
public final class ImageBuild {
  private ImageBuild() {}

  /**
   * Builds it.
   *
   * @param arguments the project's folder and the program's version
   * @throws IOException where a step fails
   * @throws InterruptedException where the build is stopped
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Place place = new Place(Path.of(arguments[0]).toAbsolutePath(), arguments[1]);
    Place.clear(place.folder());
    Files.createDirectories(place.lib());
    Files.createDirectories(place.work());
    OwnRuntime.link(place);
    LeanJar.write(place);
    Place.copy(place.project().resolve("sample-workbooks"), place.image().resolve("sample"));
    new Licences(place).write();
    Starters.write(place);
    double share = new ClassArchive(place).write(Place.LIMIT - Place.bytes(place.image()));
    Optional<Path> installer = new DebianPackage(place).write();
    Place.clear(place.work());
    tell(place, share, installer);
  }

  private static void tell(Place place, double share, Optional<Path> installer) throws IOException {
    System.out.printf(
        "%s: %,d bytes: runtime %,d, jar %,d, class archive %,d (%.0f %% of a month-end)%n",
        place.image(),
        Place.bytes(place.image()),
        Place.bytes(place.runtime()),
        Files.size(place.jar()),
        Files.size(place.archive()),
        100 * share);
    if (installer.isPresent()) {
      Path file = installer.orElseThrow();
      System.out.printf("%s: %,d bytes%n", file, Files.size(file));
    }
  }
}
