package clenchbook.print.files;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** A folder with all that is in it. */
public final class Tree {
  private Tree() {}

  /**
   * Takes it away, where it is there; a link is not followed.
   *
   * @param tree the folder, or a file
   * @throws IOException when the disk refuses; part of it may be gone then
   */
  public static void remove(Path tree) throws IOException {
    if (!Files.exists(tree, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    Files.walkFileTree(
        tree,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes unused)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(
              Path directory, @org.jspecify.annotations.Nullable IOException trouble)
              throws IOException {
            Files.delete(directory);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /**
   * The same at the end of a run: what can't be taken away, the next run takes away first.
   *
   * @param tree the folder, or a file
   */
  public static void removeQuietly(Path tree) {
    try {
      remove(tree);
    } catch (IOException leftForTheNextRun) {
      return;
    }
  }
}
