package clenchbook.register;

import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Where the register lies, and its first making. */
public final class RegisterFile {
  private static final String ENDING = ".register.db";

  /** Database File Format, SQLite documentation, section 1.3: the header string. */
  private static final byte[] HEADER = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  private RegisterFile() {}

  /**
   * The register of a book.
   *
   * @param book the workbook
   * @return {@code <name without extension>.register.db} beside it
   */
  public static Path beside(Path book) {
    Path absolute = book.toAbsolutePath();
    return absolute.resolveSibling(name(absolute) + ENDING);
  }

  /**
   * Whether a file holds a database, as a register does, whatever its name.
   *
   * @param file any file
   * @return true by its first bytes; false for a folder and a file that can't be read
   */
  public static boolean isDatabase(Path file) {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Arrays.equals(in.readNBytes(HEADER.length), HEADER);
    } catch (IOException seenWhenRead) {
      return false;
    }
  }

  private static String name(Path book) {
    String name = String.valueOf(book.getFileName());
    int dot = Files.isDirectory(book) ? -1 : name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /**
   * The registers that lie in the folder of a book.
   *
   * @param book the workbook
   * @return their names, sorted
   * @throws RegisterFault when the folder can't be listed
   */
  public static List<String> inTheFolderOf(Path book) {
    Path folder = book.toAbsolutePath().getParent();
    if (folder == null) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(path -> String.valueOf(path.getFileName()))
          .filter(name -> name.endsWith(ENDING))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new RegisterFault(Message.of("register.cantList", String.valueOf(e.getMessage())), e);
    }
  }

  /** Whether a run that was killed has left a side file with what it had not finished. */
  static boolean leftOpen(Path file) {
    return Stream.of("-journal", "-wal")
        .anyMatch(ending -> Files.exists(file.resolveSibling(file.getFileName() + ending)));
  }

  /** An empty file for the database that only its owner can read, or the existing one. */
  static Path making(Path file) throws IOException {
    Path making = file.resolveSibling("." + file.getFileName() + ".making");
    Files.deleteIfExists(making);
    Files.deleteIfExists(making.resolveSibling(making.getFileName() + "-journal"));
    // The kind of file system is asked, not the disk: not everywhere can the mounts be listed.
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.createFile(
          making,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    } else {
      Files.createFile(making);
    }
    return making;
  }

  static void made(Path making, Path file) throws IOException {
    Files.move(making, file, StandardCopyOption.ATOMIC_MOVE);
  }
}
