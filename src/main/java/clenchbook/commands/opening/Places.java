package clenchbook.commands.opening;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where a run's files lie when the command line does not say. */
public final class Places {
  private Places() {}

  public static Path reports(Path book, Optional<Path> out) {
    return out.orElseGet(
        () -> book.toAbsolutePath().resolveSibling(name(book.toAbsolutePath()) + " reports"));
  }

  private static String name(Path book) {
    String name = String.valueOf(book.getFileName());
    int dot = Files.isDirectory(book) ? -1 : name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
