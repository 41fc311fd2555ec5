package clenchbook.commands.opening;

import clenchbook.print.files.RefusedFile;
import clenchbook.texts.Message;
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
   * @param what what was to be written, in the plural
   * @param where the folder or file
   * @param trouble what the disk said
   * @param then what holds now
   * @return the fault, in one line
   */
  public static RunFault writing(Message what, Path where, IOException trouble, Message then) {
    return new RunFault(
        Message.of("commands.disk.cantWrite", what, where.toString(), why(trouble), then), trouble);
  }

  /**
   * The reason alone.
   *
   * @param trouble what the disk said
   * @return a few words
   */
  public static Message why(IOException trouble) {
    if (trouble instanceof AccessDeniedException denied) {
      return denied(target(denied));
    }
    if (trouble instanceof NotDirectoryException) {
      return Message.of("commands.disk.noFolder", String.valueOf(trouble.getMessage()));
    }
    if (trouble instanceof FileSystemException refused && refused.getReason() != null) {
      return Message.literal(target(refused) + ": " + refused.getReason());
    }
    return RefusedFile.why(trouble);
  }

  /** A move names where from and where to; where to is what refuses. */
  private static Path target(FileSystemException trouble) {
    String other = trouble.getOtherFile();
    return Path.of(other == null ? String.valueOf(trouble.getFile()) : other);
  }

  private static Message denied(Path path) {
    if (Files.exists(path)) {
      return Files.isDirectory(path)
          ? Message.of("commands.disk.noRightToFolder", path.toString())
          : Message.of("commands.disk.noRightToFile", path.toString());
    }
    Path folder = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
    return Message.of("commands.disk.noRightIn", folder.toString());
  }
}
