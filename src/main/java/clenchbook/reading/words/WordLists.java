package clenchbook.reading.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The lists of words that the program carries, one file for each language. Parted into sections,
 * each of lines; what a line says is its section's to know. A file is read when a word of its
 * language is first looked for: a book in plain English needs one of them.
 */
final class WordLists {
  /** The language that is looked at first. */
  static final String ENGLISH = "en";

  /** All languages: where two say the same of a word, the first one is kept. */
  static final List<String> LANGUAGES = List.of(ENGLISH, "de", "fr", "es", "nl");

  /** All languages but English. */
  static final List<String> FOREIGN = LANGUAGES.subList(1, LANGUAGES.size());

  private static final Map<String, Map<String, List<Line>>> LOADED = new HashMap<>();

  private WordLists() {}

  /**
   * A line of a section.
   *
   * @param language of the file, ISO 639-1
   * @param indented whether it belongs to the line without indent above it
   * @param key what stands before the equals sign; the whole line where there is none
   * @param words what stands behind it, parted by commas; empty where there is none
   */
  record Line(String language, boolean indented, String key, List<String> words) {
    /** The line's key and words. */
    List<String> all() {
      List<String> all = new ArrayList<>(words.size() + 1);
      all.add(key);
      all.addAll(words);
      return all;
    }
  }

  /** The lines of a section, language by language. */
  static List<Line> section(String name) {
    return section(name, LANGUAGES);
  }

  /** The lines of a section in some of the languages. */
  static List<Line> section(String name, List<String> languages) {
    List<Line> lines = new ArrayList<>();
    for (String language : languages) {
      List<Line> own = file(language).get(name);
      if (own == null) {
        throw new IllegalStateException("the words of " + language + " lack the section " + name);
      }
      lines.addAll(own);
    }
    return lines;
  }

  private static synchronized Map<String, List<Line>> file(String language) {
    Map<String, List<Line>> loaded = LOADED.get(language);
    if (loaded == null) {
      loaded = parse(language, read(language));
      LOADED.put(language, loaded);
    }
    return loaded;
  }

  private static String read(String language) {
    String file = language.equals(ENGLISH) ? "words.txt" : "words." + language + ".txt";
    try (InputStream stream = WordLists.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its list of words: " + file);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Map<String, List<Line>> parse(String language, String file) {
    Map<String, List<Line>> sections = new HashMap<>();
    List<Line> current = new ArrayList<>();
    int start = 0;
    while (start < file.length()) {
      int end = file.indexOf('\n', start);
      end = end < 0 ? file.length() : end;
      String line = file.substring(start, end);
      if (line.startsWith("[")) {
        String name = line.substring(1, line.indexOf(']'));
        current = sections.computeIfAbsent(name, unused -> new ArrayList<>());
      } else if (!line.isBlank() && !line.startsWith("# ")) {
        current.add(line(language, line));
      }
      start = end + 1;
    }
    return sections;
  }

  private static Line line(String language, String line) {
    int equals = line.indexOf(" = ");
    String key = (equals < 0 ? line : line.substring(0, equals)).strip();
    List<String> words = equals < 0 ? List.of() : split(line.substring(equals + 3));
    return new Line(language, line.startsWith(" "), key, words);
  }

  /** The words of a list, parted by commas. */
  static List<String> split(String list) {
    List<String> words = new ArrayList<>();
    int start = 0;
    while (start <= list.length()) {
      int comma = list.indexOf(',', start);
      int end = comma < 0 ? list.length() : comma;
      words.add(list.substring(start, end).strip());
      start = end + 1;
    }
    return words;
  }
}
