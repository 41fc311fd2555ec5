package clenchbook.commands.moving;

import clenchbook.backup.UnsoundBackup;
import clenchbook.print.files.Tree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Brings what is unpacked to rest: a new folder appears whole; in one that is there, all or none.
 */
final class PutBack {
  private PutBack() {}

  /**
   * Unpacks beside and moves.
   *
   * @param folder where to, an absolute path; nothing of the backup's may stand in it
   */
  static void all(PackedBackup packed, Path folder) throws IOException, UnsoundBackup {
    boolean there = Files.isDirectory(folder);
    Path beside =
        there
            ? folder.resolve(".being-restored")
            : folder.resolveSibling("." + folder.getFileName() + ".being-restored");
    try {
      Tree.remove(beside);
      packed.unpack(beside);
      if (there) {
        moveEach(packed, beside, folder);
      } else {
        Files.move(beside, folder, StandardCopyOption.ATOMIC_MOVE);
      }
    } finally {
      Tree.removeQuietly(beside);
    }
  }

  private static void moveEach(PackedBackup packed, Path beside, Path folder) throws IOException {
    Deque<String> moved = new ArrayDeque<>();
    try {
      for (String name : packed.manifest().onTop()) {
        Files.move(beside.resolve(name), folder.resolve(name));
        moved.push(name);
      }
    } catch (IOException refused) {
      while (!moved.isEmpty()) {
        String name = moved.pop();
        Files.move(folder.resolve(name), beside.resolve(name));
      }
      throw refused;
    }
  }
}
