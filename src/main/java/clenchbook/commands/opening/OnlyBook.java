package clenchbook.commands.opening;

import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The workbook that is meant where none is named: the only one in the folder. */
public final class OnlyBook {
  private static final List<String> ENDINGS = List.of(".xlsx", ".xlsm", ".xls", ".ods");

  private OnlyBook() {}

  /** What a folder holds: one book, or what to say of none and of several. */
  public record Found(Optional<Path> book, Message why) {}

  /**
   * Looks for it.
   *
   * @param folder any folder
   * @return the book, where the folder holds just one
   */
  public static Found in(Path folder) {
    List<Path> books = books(folder);
    if (books.size() == 1) {
      return new Found(Optional.of(books.get(0)), Message.NONE);
    }
    if (books.isEmpty()) {
      return new Found(Optional.empty(), Message.of("commands.onlyBook.none"));
    }
    List<String> names = books.stream().map(book -> String.valueOf(book.getFileName())).toList();
    return new Found(Optional.empty(), Message.of("commands.onlyBook.several", names));
  }

  private static List<Path> books(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(OnlyBook::isBook).map(Path::getFileName).sorted().toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  /** What spreadsheet programs leave beside a book that is open is none. */
  private static boolean isBook(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    boolean left = name.startsWith("~$") || name.startsWith(".");
    return !left && ENDINGS.stream().anyMatch(name::endsWith) && Files.isRegularFile(file);
  }
}
