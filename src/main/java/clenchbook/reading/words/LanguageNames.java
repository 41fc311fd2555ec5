package clenchbook.reading.words;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Languages by their code, their English name or their own. The names are gathered when the first
 * one is asked for: Java holds each language's names in a file of its own, and a book that uses
 * codes needs none of them.
 */
public final class LanguageNames {
  private static final class English {
    static final Map<String, String> CODES =
        byName(code -> new Locale(code).getDisplayLanguage(Locale.ENGLISH));
  }

  private static final class Own {
    static final Map<String, String> CODES =
        byName(code -> new Locale(code).getDisplayLanguage(new Locale(code)));
  }

  private static final class Codes {
    static final Map<String, String> CODES = byName(code -> code);
  }

  private LanguageNames() {}

  /**
   * The code of a language.
   *
   * @param text a code, with or without a country, or a name; blank is no language
   * @return the code in two small letters; empty when no language is called so
   */
  public static Optional<String> code(String text) {
    String bare = SameWords.bare(text);
    if (bare.isEmpty()) {
      return Optional.empty();
    }
    String code = text.matches("[A-Za-z]{2}[-_][A-Za-z]{2}") ? text.substring(0, 2) : text;
    return Optional.ofNullable(Codes.CODES.get(code.toLowerCase(Locale.ROOT)))
        .or(() -> Optional.ofNullable(English.CODES.get(bare)))
        .or(() -> Optional.ofNullable(Own.CODES.get(bare)));
  }

  /** Where two languages are called alike, the first code in Java's order stands. */
  private static Map<String, String> byName(Function<String, String> nameOf) {
    Map<String, String> codes = new HashMap<>();
    for (String code : Locale.getISOLanguages()) {
      codes.putIfAbsent(SameWords.bare(nameOf.apply(code)), code);
    }
    return Map.copyOf(codes);
  }
}
