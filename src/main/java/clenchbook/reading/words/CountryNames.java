package clenchbook.reading.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Countries by their two letters, their names in five languages, and a few everyday names. */
public final class CountryNames {
  private static final Map<String, String> EVERYDAY =
      Map.of(
          "uk",
          "GB",
          "greatbritain",
          "GB",
          "britain",
          "GB",
          "england",
          "GB",
          "scotland",
          "GB",
          "wales",
          "GB",
          "northernireland",
          "GB",
          "usa",
          "US",
          "america",
          "US",
          "holland",
          "NL");

  private CountryNames() {}

  /**
   * The code of a country.
   *
   * @param text two letters or a name, in any case
   * @return ISO 3166 alpha-2; empty for what is no country
   */
  public static Optional<String> code(String text) {
    String bare = SameWords.bare(text);
    if (bare.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> byLetters =
        Arrays.stream(Locale.getISOCountries()).filter(text.strip()::equalsIgnoreCase).findFirst();
    return Optional.ofNullable(EVERYDAY.get(bare)).or(() -> byLetters).or(() -> named(bare));
  }

  private static Optional<String> named(String bare) {
    return Stream.of("en", "de", "fr", "es", "nl")
        .map(Locale::forLanguageTag)
        .flatMap(
            language ->
                Arrays.stream(Locale.getISOCountries())
                    .filter(code -> SameWords.bare(name(code, language)).equals(bare)))
        .findFirst();
  }

  private static String name(String code, Locale language) {
    return new Locale("", code).getDisplayCountry(language);
  }
}
