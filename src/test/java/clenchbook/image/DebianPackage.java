package clenchbook.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The image as a package for Debian and its relatives, with entries in the menu, where {@code
 * dpkg-deb} is there. It depends on the C library alone, which holds where the JDK brings its own
 * libraries; a distribution's JDK leans on those of the distribution.
 */
final class DebianPackage {
  private static final long KIB = 1024;

  private final Place place;
  private final Path root;

  DebianPackage(Place place) {
    this.place = place;
    this.root = place.work().resolve("package");
  }

  /** Writes it, if it can. */
  Optional<Path> write() throws IOException, InterruptedException {
    Optional<Path> tool = Tool.found("dpkg-deb");
    if (Place.kind() != Place.Kind.LINUX || tool.isEmpty()) {
      return Optional.empty();
    }
    layOut();
    control();
    Path file = place.folder().resolve("clenchbook_" + place.version() + "_" + machine() + ".deb");
    Files.deleteIfExists(file);
    Tool.run(
        List.of(
            tool.orElseThrow().toString(),
            "--root-owner-group",
            "-Zgzip",
            "--build",
            root.toString(),
            file.toString()));
    return Optional.of(file);
  }

  private void layOut() throws IOException {
    Path icon = place.sources().resolve("icon");
    Place.copy(place.image(), Files.createDirectories(root.resolve("opt")).resolve("clenchbook"));
    Place.copy(place.sources().resolve("debian"), root);
    copy(icon, "clenchbook.svg", "usr/share/icons/hicolor/scalable/apps");
    copy(icon, "clenchbook.png", "usr/share/icons/hicolor/256x256/apps");
    Path licence = root.resolve("usr/share/doc/clenchbook");
    Files.createDirectories(licence);
    Files.copy(place.image().resolve("licences/parts.txt"), licence.resolve("copyright"));
    Path bin = Files.createDirectories(root.resolve("usr/bin"));
    Files.createSymbolicLink(
        bin.resolve("clenchbook"), Path.of("..", "..", "opt", "clenchbook", "bin", "clenchbook"));
  }

  private void copy(Path from, String name, String to) throws IOException {
    Path folder = Files.createDirectories(root.resolve(to));
    Files.copy(from.resolve(name), folder.resolve(name));
  }

  private void control() throws IOException {
    Path folder = Files.createDirectories(root.resolve("DEBIAN"));
    Files.writeString(
        folder.resolve("control"),
        """
        Package: clenchbook
        Version: %s
        Architecture: %s
        Maintainer: The Clenchbook developers <noreply@localhost>
        Installed-Size: %d
        Depends: libc6
        Recommends: xdg-utils
        Section: misc
        Priority: optional
        Description: a farrier's month from one workbook
         Invoices, statements, costs, stock, workload and the tax summary of a
         self-employed farrier, from one spreadsheet. Brings its own Java.
        """
            .formatted(place.version(), machine(), Place.bytes(root) / KIB));
  }

  private static String machine() {
    String machine = System.getProperty("os.arch", "");
    return machine.equals("aarch64") ? "arm64" : machine;
  }
}
