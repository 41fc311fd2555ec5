package clenchbook.reports.blocks;

import clenchbook.book.Settings;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.Currency;
import java.util.Locale;

/**
 * Writes sentences and figures as people read them in reports and on the month's page: the book's
 * currency sign, the language's separators, a true minus. Files never use it.
 *
 * <p>Rounds half up, away from zero. Immutable and thread-safe; never looks at the machine's
 * locale.
 */
public final class FigureText {
  /** From here up an amount that stands alone is written without its smallest coins. */
  private static final BigDecimal SMALL = BigDecimal.valueOf(100);

  private static final char MINUS = '\u2212';
  private static final int MINUTES = 60;
  private static final BigDecimal LONG_HOURS = BigDecimal.valueOf(100);

  private final Texts texts;
  private final Locale locale;
  private final Currency currency;
  private final boolean monthFirst;

  /**
   * Sentences and figures of one language and country.
   *
   * @param texts the texts of the language, with the country
   * @param currencyCode ISO 4217; an unknown one throws {@link IllegalArgumentException}
   */
  public FigureText(Texts texts, String currencyCode) {
    this.texts = texts;
    this.locale = texts.locale();
    this.currency = Currency.getInstance(currencyCode);
    this.monthFirst = texts.language().equals(Texts.ENGLISH) && locale.getCountry().equals("US");
  }

  /**
   * Sentences and figures as the book's settings ask for them.
   *
   * @param settings language, country and currency
   * @return the writer
   */
  public static FigureText of(Settings settings) {
    return new FigureText(settings.texts(), settings.currency());
  }

  /**
   * A sentence, or a word or two, in the farrier's language.
   *
   * @param key the text's key, written out where it is used so that it can be found
   * @param gaps what fills the text's gaps, in order: figures as this writes them, words of the
   *     book, or whole numbers that choose between one and many
   * @return the sentence
   */
  public String say(String key, Object... gaps) {
    return texts.say(key, gaps);
  }

  /**
   * A message in the farrier's language.
   *
   * @param message what to say
   * @return the sentence
   */
  public String say(Message message) {
    return texts.say(message);
  }

  /**
   * The texts themselves, for what writes the pages.
   *
   * @return the farrier's language
   */
  public Texts texts() {
    return texts;
  }

  /**
   * An amount to its smallest coin, for what adds up.
   *
   * @param amount the amount
   * @return such as {@code £1,234.50}
   */
  public String money(BigDecimal amount) {
    return money(amount, currency.getDefaultFractionDigits());
  }

  /**
   * An amount that stands alone: whole from 100 up, to the smallest coin below.
   *
   * @param amount the amount
   * @return such as {@code £1,235} or {@code £8.25}
   */
  public String about(BigDecimal amount) {
    boolean small = amount.abs().compareTo(SMALL) < 0;
    return money(amount, small ? currency.getDefaultFractionDigits() : 0);
  }

  private String money(BigDecimal amount, int decimals) {
    DecimalFormat format = (DecimalFormat) NumberFormat.getCurrencyInstance(locale);
    format.setCurrency(currency);
    String written = written(format, amount, decimals);
    String sign = currency.getSymbol(locale);
    int after = written.indexOf(sign) + sign.length();
    boolean touches =
        Character.isLetter(sign.charAt(sign.length() - 1))
            && after < written.length()
            && Character.isDigit(written.charAt(after));
    return touches ? written.substring(0, after) + '\u00A0' + written.substring(after) : written;
  }

  /**
   * The currency's sign, for a heading above bare amounts.
   *
   * @return such as {@code £}
   */
  public String currencySign() {
    return currency.getSymbol(locale);
  }

  /**
   * An amount under a heading that holds the sign.
   *
   * @param amount the amount
   * @return to its smallest coin, such as {@code 1,234.50}
   */
  public String amount(BigDecimal amount) {
    return number(amount, currency.getDefaultFractionDigits());
  }

  /**
   * A number with so many decimals.
   *
   * @param number any number
   * @param decimals zero or more
   * @return such as {@code 1,234.5}
   */
  public String number(BigDecimal number, int decimals) {
    return written((DecimalFormat) NumberFormat.getNumberInstance(locale), number, decimals);
  }

  /**
   * A measured number with so many decimals.
   *
   * @param number any finite number
   * @param decimals zero or more
   * @return such as {@code 1,234.5}
   */
  public String number(double number, int decimals) {
    return number(BigDecimal.valueOf(number), decimals);
  }

  /**
   * A measured number as a whole one.
   *
   * @param number any finite number
   * @return such as {@code 1,235}
   */
  public String whole(double number) {
    return number(number, 0);
  }

  /**
   * A measured number without trailing zeros, two decimals at most.
   *
   * @param number any finite number
   * @return such as {@code 2.5} or {@code 1,500}
   */
  public String plain(double number) {
    return plain(BigDecimal.valueOf(number));
  }

  /**
   * A number without trailing zeros, two decimals at most.
   *
   * @param number any number
   * @return such as {@code 2.5} or {@code 1,500}
   */
  public String plain(BigDecimal number) {
    BigDecimal rounded = number.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return number(rounded, Math.max(0, rounded.scale()));
  }

  /**
   * Figures as files have them, with the language's decimal mark and no other change.
   *
   * @param figures such as {@code 58.75}, or several with words of measure between
   * @return such as {@code 58,75}
   */
  public String asTyped(String figures) {
    return figures.replace('.', DecimalFormatSymbols.getInstance(locale).getDecimalSeparator());
  }

  /**
   * A count.
   *
   * @param count any whole number
   * @return such as {@code 1,234}
   */
  public String count(long count) {
    return number(BigDecimal.valueOf(count), 0);
  }

  /**
   * A percentage.
   *
   * @param percent 20 for 20 %
   * @param decimals zero or more
   * @return such as {@code 20%}
   */
  public String percent(BigDecimal percent, int decimals) {
    DecimalFormat format = (DecimalFormat) NumberFormat.getPercentInstance(locale);
    return written(format, percent.movePointLeft(2), decimals);
  }

  /**
   * A stretch of time, rounded to the minute; from a hundred hours up to the hour.
   *
   * @param hours hours, with their part of an hour as decimals
   * @return such as {@code 4 h 20}, {@code 45 min} or {@code 986 h}
   */
  public String hours(BigDecimal hours) {
    if (hours.abs().compareTo(LONG_HOURS) >= 0) {
      return number(hours, 0) + "\u00A0h";
    }
    long minutes =
        hours
            .multiply(BigDecimal.valueOf(MINUTES))
            .setScale(0, RoundingMode.HALF_UP)
            .longValueExact();
    String sign = minutes < 0 ? String.valueOf(MINUS) : "";
    long size = Math.abs(minutes);
    if (size < MINUTES) {
      return sign + size + "\u00A0min";
    }
    String whole = sign + size / MINUTES + "\u00A0h";
    return size % MINUTES == 0
        ? whole
        : whole + "\u00A0" + String.format(Locale.ROOT, "%02d", size % MINUTES);
  }

  /**
   * A stretch of measured time, from hours rounded to two decimals as files have them.
   *
   * @param hours hours, any finite number
   * @return such as {@code 4 h 20}
   */
  public String hours(double hours) {
    return hours(BigDecimal.valueOf(hours).setScale(2, RoundingMode.HALF_UP));
  }

  /**
   * Minutes as a stretch of time.
   *
   * @param minutes minutes, rounded to the minute
   * @return such as {@code 4 h 20}
   */
  public String minutes(BigDecimal minutes) {
    return hours(
        minutes
            .setScale(0, RoundingMode.HALF_UP)
            .divide(BigDecimal.valueOf(MINUTES), 6, RoundingMode.HALF_UP));
  }

  /**
   * A day without its year.
   *
   * @param day the day
   * @return such as {@code 12 October}
   */
  public String day(LocalDate day) {
    return ordinal(DateTimeFormatter.ofPattern(dayAndMonth(), locale).format(day));
  }

  /**
   * A day without its year, short.
   *
   * @param day the day
   * @return such as {@code 12 Oct}
   */
  public String shortDay(LocalDate day) {
    String pattern = monthFirst ? "MMM d" : shortDayFirst();
    return ordinal(DateTimeFormatter.ofPattern(pattern, locale).format(day));
  }

  private String shortDayFirst() {
    return switch (locale.getLanguage()) {
      case "de" -> "d.\u00A0MMM";
      case "fr" -> "d\u00A0MMM";
      default -> "d MMM";
    };
  }

  /**
   * A day with its weekday, short.
   *
   * @param day the day
   * @return such as {@code Mon 12 Oct}
   */
  public String weekday(LocalDate day) {
    return DateTimeFormatter.ofPattern("EEE ", locale).format(day) + shortDay(day);
  }

  /**
   * A day with its year.
   *
   * @param day the day
   * @return such as {@code 12 October 2026}
   */
  public String date(LocalDate day) {
    String pattern = dayAndMonth() + (monthFirst ? ", uuuu" : yearAfterDay());
    return ordinal(DateTimeFormatter.ofPattern(pattern, locale).format(day));
  }

  /** French counts the first of a month: 1er octobre, then 2 octobre. */
  private String ordinal(String day) {
    boolean first = day.startsWith("1\u00A0");
    return first && locale.getLanguage().equals("fr") ? "1er" + day.substring(1) : day;
  }

  private String yearAfterDay() {
    return locale.getLanguage().equals("es") ? " 'de' uuuu" : " uuuu";
  }

  private String dayAndMonth() {
    return switch (locale.getLanguage()) {
      case "de" -> "d.\u00A0MMMM";
      case "fr" -> "d\u00A0MMMM";
      case "es" -> "d 'de' MMMM";
      default -> monthFirst ? "MMMM d" : "d MMMM";
    };
  }

  /**
   * The week a day lies in; weeks begin on Monday (ISO 8601).
   *
   * @param day any day of it
   * @return its Monday, such as {@code 12 October}
   */
  public String weekOf(LocalDate day) {
    return day(day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)));
  }

  /**
   * A month.
   *
   * @param month the month
   * @return such as {@code October 2026}
   */
  public String month(YearMonth month) {
    String year = locale.getLanguage().equals("es") ? "LLLL 'de' uuuu" : "LLLL uuuu";
    return DateTimeFormatter.ofPattern(year, locale).format(month);
  }

  private static String written(DecimalFormat format, BigDecimal number, int decimals) {
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    format.setRoundingMode(RoundingMode.HALF_UP);
    BigDecimal rounded = number.setScale(scale(format, decimals), RoundingMode.HALF_UP);
    return format.format(rounded).replace('-', MINUS);
  }

  /** A percentage is written hundredfold. */
  private static int scale(DecimalFormat format, int decimals) {
    return format.getMultiplier() == 100 ? decimals + 2 : decimals;
  }
}
