package clenchbook.speed;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where the program to be measured lies, and where measuring may write: {@code target/speed}.
 *
 * @param project the project's folder, absolute
 */
record Places(Path project) {
  Places {
    project = project.toAbsolutePath().normalize();
  }

  Path target() {
    return project.resolve("target");
  }

  /** The packaged program. */
  Path jar() {
    return target().resolve("clenchbook.jar");
  }

  /** The launcher of Linux and macOS beside it. */
  Path launcher() {
    return target().resolve("clenchbook");
  }

  Path folder() {
    return target().resolve("speed");
  }

  /** The floors' classes, packed by {@link FloorsJar}. */
  Path floors() {
    return folder().resolve("floors.jar");
  }

  /** Empty before each process; what it writes goes here. */
  Path scratch() {
    return folder().resolve("run");
  }

  /** What a process said, in a file, so that nobody need read along while it is timed. */
  Path said() {
    return folder().resolve("said.txt");
  }

  /** The farrier's life of so many visits; written if missing. */
  Path life(int visits) throws IOException {
    return book("life", visits);
  }

  /** The wide sheet of so many rows; written if missing. */
  Path wide(int rows) throws IOException {
    return book("wide", rows);
  }

  private Path book(String kind, int rows) throws IOException {
    Path books = folder().resolve("books");
    Path book = books.resolve(kind + "-" + rows + ".xlsx");
    if (!Files.exists(book)) {
      MakeBooks.main(new String[] {books.toString(), kind, String.valueOf(rows)});
    }
    return book;
  }

  /** The arguments of a month's end of this book, with reports and register in the scratch. */
  List<String> monthEnd(Path book) {
    return List.of(
        "month-end",
        book.toString(),
        "--month",
        "2026-10",
        "--today",
        "2026-11-02",
        "--out",
        scratch().resolve("reports").toString(),
        "--register",
        scratch().resolve("pace.register.db").toString());
  }

  /** The class path of a floor: the program, for its template and its fonts, then the floors. */
  String floorsPath() {
    return jar() + File.pathSeparator + floors();
  }

  void emptyScratch() throws IOException {
    removeTree(scratch());
    Files.createDirectories(scratch());
  }

  static void removeTree(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }
}
