package clenchbook.tax.page;

import java.util.Map;
import java.util.TreeMap;

/**
 * The sentences of the page in other languages, by language and English sentence.
 *
 * @param byLanguage two-letter code, then the English sentence, then the translated one
 */
public record Translations(Map<String, Map<String, String>> byLanguage) {
  /** No language but English. */
  public static final Translations NONE = new Translations(Map.of());

  /** Copies its maps. */
  public Translations {
    Map<String, Map<String, String>> copy = new TreeMap<>();
    byLanguage.forEach((language, sentences) -> copy.put(language, Map.copyOf(sentences)));
    byLanguage = Map.copyOf(copy);
  }

  /** The sentences of a language; none where it is not carried. */
  Map<String, String> of(String language) {
    return byLanguage.getOrDefault(language, Map.of());
  }
}
