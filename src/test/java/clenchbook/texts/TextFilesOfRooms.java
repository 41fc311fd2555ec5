package clenchbook.texts;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.reading.words.Vocabulary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The files of texts as they lie in the sources, and the keys that the program's code names. */
final class TextFilesOfRooms {
  static final Path TEXTS = Path.of("src/main/resources/texts");
  static final Path CODE = Path.of("src/main/java");

  /** The first line of the English file of a country's room. */
  private static final String COUNTRY = "# a country's room";

  private static final Pattern ENTRY = Pattern.compile("([^=\\s]+) = (.*)");
  private static final Pattern GAP = Pattern.compile("\\{(\\d+)[,}]");
  private static final Pattern KEY = Pattern.compile("\"([a-z]+)((?:\\.[a-z][A-Za-z0-9]*)+)\"");

  /** What ends like this behind a room's name is a file. */
  private static final Set<String> ENDINGS =
      Set.of(
          "csv",
          "pdf",
          "css",
          "json",
          "properties",
          "txt",
          "xlsx",
          "ics",
          "html",
          "db",
          "xml",
          "sha256");

  private TextFilesOfRooms() {}

  /** The rooms that have texts, by the English files. */
  static List<String> rooms() {
    return list(TEXTS.resolve(Texts.ENGLISH)).stream()
        .map(file -> file.getFileName().toString().replace(".properties", ""))
        .toList();
  }

  static Path file(String language, String room) {
    return TEXTS.resolve(language).resolve(room + ".properties");
  }

  /** The lines of a file that are neither blank nor comments; none where there is no file. */
  static List<String> lines(Path file) {
    try {
      return Files.exists(file)
          ? Files.readAllLines(file).stream()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .toList()
          : List.of();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The texts of a file by key; a line of another form fails, and so does a key given twice. */
  static Map<String, String> texts(Path file) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String line : lines(file)) {
      Matcher entry = ENTRY.matcher(line);
      if (!entry.matches()) {
        throw new AssertionError(file + ": not 'key = text' on one line: " + line);
      }
      if (texts.put(entry.group(1), entry.group(2)) != null) {
        throw new AssertionError(file + ": twice " + entry.group(1));
      }
    }
    return texts;
  }

  /** The numbers of a text's gaps. */
  static Set<Integer> gaps(String text) {
    Set<Integer> gaps = new TreeSet<>();
    GAP.matcher(text).results().forEach(gap -> gaps.add(Integer.valueOf(gap.group(1))));
    return gaps;
  }

  /** The guide's names of sheets, headings and settings, as texts write them in brackets. */
  static Set<String> bookNames() {
    Set<String> names = new TreeSet<>();
    Vocabulary words = Vocabulary.load();
    for (SheetKind kind : SheetKind.values()) {
      names.add(kind.title());
      words.of(kind).canonicalHeadings().forEach(name -> names.add(kind.title() + "/" + name));
    }
    for (Setting setting : Setting.values()) {
      names.add("Settings/" + setting.title());
    }
    return names;
  }

  /**
   * Whether a room is a country's own: it may exist in English alone, and then English is said. Its
   * English file says so in its first line.
   */
  static boolean isCountrys(String room) {
    return read(file(Texts.ENGLISH, room)).startsWith(COUNTRY);
  }

  /** Every key that the program's code or its rate tables name, with the file that names it. */
  static Map<String, Path> named() {
    List<String> rooms = rooms();
    Map<String, Path> named = new LinkedHashMap<>();
    RowsOfRates.all().forEach(row -> row.key().ifPresent(key -> named.put(key, row.file())));
    for (Path file : code()) {
      Matcher key = KEY.matcher(read(file));
      while (key.find()) {
        String last = key.group(2).substring(key.group(2).lastIndexOf('.') + 1);
        if (rooms.contains(key.group(1)) && !ENDINGS.contains(last)) {
          named.put(key.group(1) + key.group(2), file);
        }
      }
    }
    return named;
  }

  static List<Path> code() {
    try (Stream<Path> files = Files.walk(CODE)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<Path> list(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return new ArrayList<>(files.sorted().toList());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
