package clenchbook.commands.moving;

import clenchbook.backup.PackedFile;
import clenchbook.backup.Role;
import clenchbook.book.Setting;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.WaitingFile;
import clenchbook.reading.FileSum;
import clenchbook.reading.HeadingsFile;
import clenchbook.register.RegisterFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the files of a book and those that a run reads beside it, and names each as it must lie to
 * be found again: a file that was named on the command line too.
 */
final class BesideTheBook {
  private final OpenBook open;
  private final Path folder;
  private final Map<PackedFile, Path> found = new LinkedHashMap<>();

  BesideTheBook(OpenBook open) {
    this.open = open;
    this.folder = OpenBook.folder(open.file());
  }

  /** The name of the book, a file or a folder. */
  String book() {
    return name(open.file().toAbsolutePath());
  }

  /**
   * Finds them.
   *
   * @param register a copy of the register; empty where the book has none
   * @param headings the file of headings that was named; empty for the one beside the book
   * @param rates the folder of rates that was named; empty for the one beside the book
   * @param reports the folder of reports, in which payments may wait
   * @return where each lies, in no order
   */
  Map<PackedFile, Path> find(
      Optional<Path> register, Optional<Path> headings, Optional<Path> rates, Path reports)
      throws IOException {
    for (Path file : FileSum.files(open.file())) {
      boolean within = Files.isDirectory(open.file());
      add(Role.BOOK, within ? book() + "/" + name(file) : book(), file);
    }
    register.ifPresent(copy -> add(Role.REGISTER, name(RegisterFile.beside(open.file())), copy));
    Path words = HeadingsFile.beside(open.file());
    add(Role.HEADINGS, name(words), headings.orElse(words));
    addAll(Role.TEMPLATES, "report-templates", folder.resolve("report-templates"));
    addAll(Role.RATES, "rates", rates.orElse(folder.resolve("rates")));
    addLogo();
    Path usual = Places.reports(open.file(), Optional.empty());
    add(Role.WAITING, name(usual) + "/" + WaitingFile.PATH, reports.resolve(WaitingFile.PATH));
    return found;
  }

  private void add(Role role, String name, Path file) {
    if (Files.isRegularFile(file)) {
      found.put(new PackedFile(role, name), file);
    }
  }

  private void addAll(Role role, String name, Path from) throws IOException {
    if (!Files.isDirectory(from)) {
      return;
    }
    try (Stream<Path> files = Files.walk(from, 2)) {
      files.forEach(
          file ->
              add(role, name + "/" + from.relativize(file).toString().replace('\\', '/'), file));
    }
  }

  /** Under the name that the book gives it; only one within the folder is ever read. */
  private void addLogo() throws IOException {
    String name = open.book().settings().text(Setting.LOGO);
    try {
      Path file = folder.resolve(name).normalize();
      boolean within = !name.isEmpty() && file.startsWith(folder) && Files.isRegularFile(file);
      if (within && file.toRealPath().startsWith(folder.toRealPath())) {
        add(Role.LOGO, folder.relativize(file).toString().replace('\\', '/'), file);
      }
    } catch (InvalidPathException noName) {
      return;
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }
}
