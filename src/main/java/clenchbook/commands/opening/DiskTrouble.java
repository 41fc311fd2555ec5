package clenchbook.commands.opening;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Optional;

/** Why a disk refused, in words that name the file or folder to be mended. */
public final class DiskTrouble {
  private DiskTrouble() {}

  /**
   * A run that could not write.
   *
   * @param what what was to be written, in the plural or not, with its verb: {@code the reports}
   * @param where the folder or file
   * @param trouble what the disk said
   * @param then what holds now, such as {@code nothing is lost}
   * @return the fault, in one line
   */
  public static RunFault writing(String what, Path where, IOException trouble, String then) {
    return new RunFault(
        what
            + " can't be written to "
            + where
            + " ("
            + why(trouble)
            + "); make room or mend the folder's rights, then run again: "
            + then,
        trouble);
  }

  /**
   * The reason alone.
   *
   * @param trouble what the disk said
   * @return a few words
   */
  public static String why(IOException trouble) {
    if (trouble instanceof AccessDeniedException denied) {
      return denied(target(denied));
    }
    if (trouble instanceof NotDirectoryException) {
      return trouble.getMessage() + " is no folder";
    }
    if (trouble instanceof FileSystemException refused && refused.getReason() != null) {
      return target(refused) + ": " + refused.getReason();
    }
    return String.valueOf(trouble.getMessage());
  }

  /** A move names where from and where to; where to is what refuses. */
  private static Path target(FileSystemException trouble) {
    String other = trouble.getOtherFile();
    return Path.of(other == null ? String.valueOf(trouble.getFile()) : other);
  }

  private static String denied(Path path) {
    if (Files.exists(path)) {
      return "no right to " + (Files.isDirectory(path) ? "the folder " : "the file ") + path;
    }
    Path folder = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
    return "no right to write in the folder " + folder;
  }
}
