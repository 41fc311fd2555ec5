package clenchbook.texts;

import java.util.Optional;

/** Where the texts of each language come from. */
@FunctionalInterface
public interface TextSource {
  /**
   * A text as its language's file has it, with its gaps open.
   *
   * @param language one of {@link Texts#LANGUAGES}
   * @param key the key
   * @return the text; empty where that language lacks it
   */
  Optional<String> find(String language, String key);

  /**
   * Whether a language has all its texts, so that nobody reads a page of two languages.
   *
   * @param language one of {@link Texts#LANGUAGES}
   * @return whether it is said in that language, otherwise in English
   */
  default boolean speaks(String language) {
    return true;
  }
}
