package clenchbook.run;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

/**
 * A folder in which nothing may be written until it is opened again: by its rights, or for a
 * machine's root, whom rights don't bind, as a read-only mount of itself.
 */
final class ShutFolder implements AutoCloseable {
  private final Path folder;
  private final boolean root = "root".equals(System.getProperty("user.name"));

  private ShutFolder(Path folder) {
    this.folder = folder;
  }

  /** Shuts it, or skips the test where that can't be done. */
  static ShutFolder of(Path folder) throws IOException, InterruptedException {
    ShutFolder shut = new ShutFolder(folder);
    String path = folder.toString();
    if (shut.root) {
      assumeTrue(run("mount", "--bind", path, path) == 0, "this root may not mount");
      if (run("mount", "-o", "remount,ro,bind", path) != 0) {
        shut.close();
        assumeTrue(false, "this root may not mount read-only");
      }
    } else {
      assumeTrue(
          Files.getFileStore(folder).supportsFileAttributeView("posix"), "no rights to take away");
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-x------"));
    }
    return shut;
  }

  @Override
  public void close() throws IOException, InterruptedException {
    if (root) {
      run("umount", folder.toString());
    } else {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    }
  }

  private static int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(List.of(command)).inheritIO().start().waitFor();
  }
}
