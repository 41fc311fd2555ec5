package clenchbook.reports.letters;

import java.util.Locale;

/**
 * The language a document speaks and the country whose ways of writing money and dates it follows.
 *
 * @param language two-letter code such as {@code en}; a language without wording is printed in
 *     English
 * @param country two-letter code such as {@code GB}; empty where not known
 */
public record PrintLocale(String language, String country) {
  /** Puts the codes into their usual case. */
  public PrintLocale {
    language = language.toLowerCase(Locale.ROOT);
    country = country.toUpperCase(Locale.ROOT);
  }

  /**
   * The same for Java's formats.
   *
   * @return language and country
   */
  public Locale toLocale() {
    return new Locale.Builder().setLanguage(language).setRegion(country).build();
  }
}
