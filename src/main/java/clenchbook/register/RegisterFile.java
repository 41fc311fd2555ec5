package clenchbook.register;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the register lies, and its first making. */
public final class RegisterFile {
  private static final String ENDING = ".register.db";

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
   * The register that a book has beside it.
   *
   * @param book the workbook
   * @return its file; empty where the book has none of its name
   */
  public static Optional<Path> find(Path book) {
    Path absolute = book.toAbsolutePath();
    return Optional.of(absolute.resolveSibling(name(absolute) + ENDING)).filter(Files::exists);
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
      throw new RegisterFault("the folder of the book can't be listed: " + e.getMessage(), e);
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
    if (Files.getFileStore(file.toAbsolutePath().getParent()).supportsFileAttributeView("posix")) {
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
