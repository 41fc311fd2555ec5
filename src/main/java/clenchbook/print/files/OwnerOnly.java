package clenchbook.print.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Makes files and folders that only their owner can read, where the file system knows owners:
 * invoices and addresses are nobody else's business on a shared machine.
 */
public final class OwnerOnly {
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

  /**
   * The rights a new file or folder is made with. Asks the machine's kind of file system, not the
   * very disk: the list of mounts can't be read everywhere (a program shut into a folder of its
   * own), and a disk that knows no owners takes the rights and forgets them.
   */
  private static FileAttribute<?>[] attributes(Path path, String rights) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
