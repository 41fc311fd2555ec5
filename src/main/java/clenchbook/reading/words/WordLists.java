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
 * each of lines; what a line says is its section's to know.
 */
final class WordLists {
  /** The languages, English first: where two say the same of a word, the first one is kept. */
  static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "nl");

  private static final class Loaded {
    static final Map<String, List<Line>> SECTIONS = load();
  }

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
      List<String> all = new ArrayList<>(List.of(key));
      all.addAll(words);
      return all;
    }
  }

  /** The lines of a section, language by language. */
  static List<Line> section(String name) {
    List<Line> lines = Loaded.SECTIONS.get(name);
    if (lines == null) {
      throw new IllegalStateException("the lists of words lack the section " + name);
    }
    return lines;
  }

  private static Map<String, List<Line>> load() {
    Map<String, List<Line>> sections = new HashMap<>();
    for (String language : LANGUAGES) {
      String file = language.equals("en") ? "words.txt" : "words." + language + ".txt";
      add(sections, language, read(file));
    }
    return sections;
  }

  private static String read(String file) {
    try (InputStream stream = WordLists.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its list of words: " + file);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static void add(Map<String, List<Line>> sections, String language, String file) {
    List<Line> current = new ArrayList<>();
    for (String line : file.lines().toList()) {
      if (line.startsWith("[")) {
        String name = line.substring(1, line.indexOf(']'));
        current = sections.computeIfAbsent(name, unused -> new ArrayList<>());
      } else if (!line.isBlank() && !line.startsWith("# ")) {
        current.add(line(language, line));
      }
    }
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
    for (String word : list.split(",")) {
      words.add(word.strip());
    }
    return words;
  }
}
