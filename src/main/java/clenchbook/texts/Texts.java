package clenchbook.texts;

import java.math.BigDecimal;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the program says, in one language. Never looks at the machine's locale.
 *
 * <p>Texts are patterns of {@link MessageFormat} in which an apostrophe is just an apostrophe. What
 * a language lacks is said in English.
 */
public final class Texts {
  /** The language in which every text is written first. */
  public static final String ENGLISH = "en";

  /** The languages that the program speaks, as two-letter codes. */
  public static final List<String> LANGUAGES = List.of(ENGLISH, "de", "fr", "es", "nl");

  /** English whose numbers have a point and no separators. */
  private static final Locale FILES = new Locale(ENGLISH, "US", "POSIX");

  private static final String BETWEEN = ", ";
  private static final String BETWEEN_SENTENCES = "; ";

  /**
   * Stands for an apostrophe while a pattern is filled, since there one would begin a quotation.
   */
  private static final char APOSTROPHE = '\uE000';

  private static final Pattern NAME = Pattern.compile("\\[([^\\]]+)\\]");

  /** A {@link #NAME} while a pattern is filled, so that brackets of the book are no names. */
  private static final Pattern MARKED_NAME = Pattern.compile("\uE001([^\uE002]+)\uE002");

  private final Locale locale;
  private final TextSource source;
  private final UnaryOperator<String> names;

  private Texts(Locale locale, TextSource source, UnaryOperator<String> names) {
    this.locale = locale;
    this.source = source;
    this.names = names;
  }

  /**
   * The texts of a language.
   *
   * @param language two-letter code; one that the program doesn't speak counts as English
   * @param country two-letter code, for how numbers are written; empty where not known
   * @param source where the texts come from
   * @return the texts
   */
  public static Texts of(String language, String country, TextSource source) {
    String spoken = LANGUAGES.contains(language) ? language : ENGLISH;
    return new Texts(new Locale(spoken, country), source, BookName.PLAIN);
  }

  /**
   * The same for a book that calls its sheets and headings otherwise. English sentences keep the
   * program's names, by which the guide explains them.
   *
   * @param names what the book calls a sheet, heading or setting, by {@link BookName#name()}
   * @return texts that say these names
   */
  public Texts naming(UnaryOperator<String> names) {
    return new Texts(locale, source, names);
  }

  /**
   * The same in another language.
   *
   * @param language two-letter code; one that the program doesn't speak counts as English
   * @return its texts, with numbers as this country writes them
   */
  public Texts in(String language) {
    return of(language, locale.getCountry(), source).naming(names);
  }

  /**
   * English with numbers as files have them, without separators: what a file says in sentences is
   * the same in every language.
   *
   * @return those texts
   */
  public Texts forFiles() {
    return new Texts(FILES, source, BookName.PLAIN);
  }

  /** The language, as a two-letter code. */
  public String language() {
    return locale.getLanguage();
  }

  /** The language its sentences are in, as a two-letter code: English where not all are there. */
  public String spoken() {
    return source.speaks(language()) ? language() : ENGLISH;
  }

  /** Language and country, for numbers and days. */
  public Locale locale() {
    return locale;
  }

  /**
   * A text with its gaps filled.
   *
   * @param key the key, written out where it is used so that it can be found
   * @param gaps what fills the gaps, in order, as in {@link Message}
   * @return the sentence
   */
  public String say(String key, Object... gaps) {
    return say(Message.of(key, gaps));
  }

  /**
   * A message as a sentence.
   *
   * @param message what to say
   * @return the sentence
   * @throws IllegalArgumentException where no such text exists, which is a fault of the program
   */
  public String say(Message message) {
    if (message.key().isEmpty()) {
      return message.gaps().stream().map(gap -> spaced(alone(gap))).collect(Collectors.joining());
    }
    String pattern = NAME.matcher(pattern(message.key())).replaceAll("\uE001$1\uE002");
    Object[] gaps = message.gaps().stream().map(this::written).toArray();
    String filled = new MessageFormat(pattern.replace('\'', APOSTROPHE), locale).format(gaps);
    return named(filled.replace(APOSTROPHE, '\''));
  }

  /** With the names of sheets, headings and settings in their places. */
  private String named(String filled) {
    return MARKED_NAME
        .matcher(filled)
        .replaceAll(found -> Matcher.quoteReplacement(name(found.group(1))));
  }

  private String name(String name) {
    return spoken().equals(ENGLISH) ? BookName.PLAIN.apply(name) : names.apply(name);
  }

  /** French sets a narrow space before a semicolon that stands between two sentences. */
  private String spaced(String sign) {
    return sign.equals(BETWEEN_SENTENCES) && spoken().equals("fr") ? '\u202F' + sign : sign;
  }

  private String pattern(String key) {
    Optional<String> own = source.find(spoken(), key);
    return own.or(() -> source.find(ENGLISH, key))
        .orElseThrow(() -> new IllegalArgumentException("there is no text " + key));
  }

  /** What fills a gap, as this language writes it; whole numbers stay, for they choose the form. */
  private Object written(Object gap) {
    if (gap instanceof Message message) {
      return say(message);
    }
    if (gap instanceof List<?> several) {
      return several.stream().map(each -> alone(each)).collect(Collectors.joining(BETWEEN));
    }
    if (gap instanceof BookName name) {
      return name(name.name());
    }
    if (gap instanceof BigDecimal number) {
      return decimal(number);
    }
    if (gap instanceof Month month) {
      return month.getDisplayName(TextStyle.FULL_STANDALONE, new Locale(spoken()));
    }
    return gap instanceof Number ? gap : gap.toString();
  }

  private String alone(Object gap) {
    Object written = written(gap);
    return written instanceof Number whole
        ? NumberFormat.getIntegerInstance(locale).format(whole)
        : written.toString();
  }

  /** With all its digits, so that what is said is what was reckoned. */
  private String decimal(BigDecimal number) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    int decimals = Math.max(0, number.scale());
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    return format.format(number);
  }

  /** Whether both say the same in the same way, so that equal pages are equal. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Texts texts
        && locale.equals(texts.locale)
        && source.equals(texts.source)
        && names.equals(texts.names);
  }

  @Override
  public int hashCode() {
    return Objects.hash(locale, source, names);
  }
}
