package clenchbook.print.invoice;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The words of invoices, credit notes and statements in one language. */
public final class LetterWording {
  /** The languages there is wording for; the first stands in for all others. */
  static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "nl");

  private static final Map<String, LetterWording> LOADED = new ConcurrentHashMap<>();

  private final String language;
  private final Map<String, String> words;

  private LetterWording(String language, Map<String, String> words) {
    this.language = language;
    this.words = words;
  }

  /**
   * The wording of a language.
   *
   * @param language two-letter code; English where there is none
   * @return the words
   */
  public static LetterWording of(String language) {
    String code = language.toLowerCase(Locale.ROOT);
    String known = LANGUAGES.contains(code) ? code : LANGUAGES.get(0);
    return LOADED.computeIfAbsent(known, LetterWording::load);
  }

  private static LetterWording load(String language) {
    String resource = "/report-templates/wording/" + language + ".properties";
    try (InputStream in = LetterWording.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException("wording missing from the program: " + language);
      }
      Properties properties = new Properties();
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      Map<String, String> words = new TreeMap<>();
      properties.forEach((key, value) -> words.put(key.toString(), value.toString()));
      return new LetterWording(language, words);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The language these words are in.
   *
   * @return two-letter code
   */
  public String language() {
    return language;
  }

  /** The word before a page's number. */
  public String page() {
    return say("page");
  }

  Map<String, String> words() {
    return Map.copyOf(words);
  }

  /**
   * A sentence with its gaps filled.
   *
   * @param key the sentence's key
   * @param fillings what stands for {0}, {1} and so on
   * @return the sentence, without blanks at its ends
   */
  String say(String key, String... fillings) {
    String sentence = words.get(key);
    if (sentence == null) {
      throw new IllegalArgumentException("no wording for " + key + " in " + language);
    }
    StringBuilder said = new StringBuilder();
    int at = 0;
    while (at < sentence.length()) {
      boolean gap =
          sentence.charAt(at) == '{'
              && at + 2 < sentence.length()
              && sentence.charAt(at + 2) == '}';
      if (gap) {
        said.append(fillings[sentence.charAt(at + 1) - '0']);
        at += 3;
      } else {
        said.append(sentence.charAt(at));
        at++;
      }
    }
    return said.toString().strip();
  }
}
