package clenchbook.print.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes files and folders that only their owner can read, where the file system knows owners:
 * invoices and addresses are nobody else's business on a shared machine.
 */
public final class OwnerOnly {
  /** Whether a folder's file system knows owners; finding out reads the list of all mounts. */
  private static final Map<Path, Boolean> KNOWS_OWNERS = new ConcurrentHashMap<>();

  private OwnerOnly() {}

  /**
   * Makes a folder and those above it that are missing; folders that are there stay as they are.
   *
   * @param folder the folder
   * @throws IOException when it can't be made
   */
  public static void makeFolders(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, attributes(folder, "rwx------"));
    }
  }

  /**
   * Opens a new or emptied file.
   *
   * @param file the file
   * @return takes its bytes
   * @throws IOException when it can't be written
   */
  public static OutputStream open(Path file) throws IOException {
    return Channels.newOutputStream(
        Files.newByteChannel(
            file,
            Set.of(
                StandardOpenOption.CREATE,
                StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE),
            attributes(file, "rw-------")));
  }

  private static FileAttribute<?>[] attributes(Path path, String rights) throws IOException {
    return knowsOwners(nearest(path))
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }

  private static boolean knowsOwners(Path folder) throws IOException {
    Boolean known = KNOWS_OWNERS.get(folder);
    if (known == null) {
      known = Files.getFileStore(folder).supportsFileAttributeView("posix");
      KNOWS_OWNERS.put(folder, known);
    }
    return known;
  }

  /** The nearest folder above that exists. */
  private static Path nearest(Path path) {
    Path at = path.toAbsolutePath();
    while (!Files.isDirectory(at)) {
      Path parent = at.getParent();
      if (parent == null) {
        return at;
      }
      at = parent;
    }
    return at;
  }
}
