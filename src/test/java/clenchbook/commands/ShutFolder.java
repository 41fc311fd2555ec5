package clenchbook.commands;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.function.Executable;

/**
 * A folder in which nothing may be written until it is opened again: by its rights, or for a
 * machine's root, whom rights don't bind, as a read-only mount of itself.
 */
final class ShutFolder {
  private final Path folder;
  private final boolean root = "root".equals(System.getProperty("user.name"));

  private ShutFolder(Path folder) {
    this.folder = folder;
  }

  /** Does something while the folder is shut, or skips the test where it can't be shut. */
  static void during(Path folder, Executable what) throws Throwable {
    ShutFolder shut = new ShutFolder(folder);
    shut.shut();
    try {
      what.execute();
    } finally {
      shut.open();
    }
  }

  private void shut() throws IOException {
    String path = folder.toString();
    if (root) {
      assumeTrue(run("mount", "--bind", path, path) == 0, "this root may not mount");
      if (run("mount", "-o", "remount,ro,bind", path) != 0) {
        open();
        assumeTrue(false, "this root may not mount read-only");
      }
    } else {
      assumeTrue(
          Files.getFileStore(folder).supportsFileAttributeView("posix"), "no rights to take away");
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-x------"));
    }
  }

  private void open() throws IOException {
    if (root) {
      run("umount", folder.toString());
    } else {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    }
  }

  private static int run(String... command) throws IOException {
    return new ProcessBuilder(List.of(command)).inheritIO().start().onExit().join().exitValue();
  }
}
