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
}
