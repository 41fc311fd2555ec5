package clenchbook.cli;

import clenchbook.texts.Message;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether this Java knows how the program's languages write numbers. One without locale data says
 * nothing and prints German money as {@code €1,234.50}.
 */
final class NumberFormats {
  /** A language, its country and what it puts before the cents (Unicode CLDR 42, numbers). */
  private record Written(String language, String country, char decimal) {
    boolean isKnown() {
      Locale locale = new Locale.Builder().setLanguage(language).setRegion(country).build();
      return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == decimal;
    }
  }

  private static final List<Written> LANGUAGES =
      List.of(
          new Written("en", "GB", '.'),
          new Written("de", "DE", ','),
          new Written("fr", "FR", ','),
          new Written("es", "ES", ','),
          new Written("nl", "NL", ','));

  private NumberFormats() {}

  /** What is wrong and what to do, in one line; nothing where all languages are known. */
  static Optional<Message> missing() {
    return LANGUAGES.stream()
        .filter(language -> !language.isKnown())
        .findFirst()
        .map(language -> Message.of("cli.numbersUnknown", language.language()));
  }
}
