package clenchbook.reading.words;

import java.util.function.UnaryOperator;

/**
 * What a starter in a language calls a sheet, heading or setting, as long as no book is known.
 *
 * @param language ISO 639-1
 */
public record StarterNames(String language) implements UnaryOperator<String> {
  @Override
  public String apply(String name) {
    return StarterWords.of(language).word(name);
  }
}
