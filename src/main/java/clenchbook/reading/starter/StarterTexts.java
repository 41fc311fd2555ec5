package clenchbook.reading.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The texts of a starter in another language than English, by what they say in English. */
final class StarterTexts {
  private final List<String> howTo = new ArrayList<>();
  private final Map<String, String> purposes = new HashMap<>();
  private final Map<String, String> words = new HashMap<>();

  private StarterTexts() {}

  /**
   * Reads the texts of a language.
   *
   * @throws IllegalStateException where the program has none
   */
  static StarterTexts load(String language) {
    StarterTexts texts = new StarterTexts();
    texts.read(resource("starter." + language + ".txt"));
    return texts;
  }

  static String resource(String name) {
    try (InputStream stream = StarterTexts.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its starter: " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private void read(String file) {
    String section = "";
    for (String line : file.lines().toList()) {
      if (line.startsWith("[")) {
        int end = line.indexOf(']');
        section = line.substring(1, end);
        purposes.put(section, line.substring(end + 1).strip());
      } else if (section.equals("how to")) {
        howTo.add(line);
      } else if (!line.isBlank() && !line.startsWith("#")) {
        int equals = line.indexOf(" = ");
        String key = line.substring(0, equals).strip();
        String text = line.substring(equals + 3).strip();
        if (section.equals("words")) {
          words.put(key, text);
        } else {
          purposes.put(section + "/" + key, text);
        }
      }
    }
  }

  /** What stands on the first sheet, a line each. */
  List<String> howTo() {
    return howTo;
  }

  /** What a sheet is for. */
  String purpose(String sheet) {
    return found(purposes, sheet);
  }

  /** What a column or setting is for. */
  String purpose(String sheet, String name) {
    return found(purposes, sheet + "/" + name);
  }

  /** A word of an example or of a list to choose from; one that is no word stays as it is. */
  String word(String sheet, String heading, String english) {
    String own = words.get(sheet + "/" + heading + "/" + english);
    return own != null ? own : words.getOrDefault(english, english);
  }

  /** A cell of an example: texts have words, numbers and days are the same in every language. */
  String example(String sheet, StarterList.Column column, String english) {
    boolean worded = column.kind().equals("text") && !english.isEmpty();
    return worded ? word(sheet, column.heading(), english) : english;
  }

  private static String found(Map<String, String> texts, String key) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalStateException("a starter says nothing of " + key);
    }
    return text;
  }
}
