package clenchbook.print.invoice;

import clenchbook.reports.letters.PrintLocale;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Currency;
import java.util.Locale;

/**
 * Writes money, percentages and dates as a country writes them. Never looks at the machine's
 * locale. Amounts keep the digits of their currency: none for yen, two for euro, three for dinar.
 *
 * <p>Not thread-safe; made anew for each document.
 */
public final class PrintFormats {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final DecimalFormat money;
  private final DecimalFormat amount;
  private final NumberFormat percent;
  private final Currency currency;
  private final Locale locale;
  private final DateTimeFormatter longDate;
  private final DateTimeFormatter shortDate;
  private final DateTimeFormatter month;
  private final DateTimeFormatter dayMonth;

  /**
   * Formats of one language and country.
   *
   * @param printLocale language and country; a language without wording writes as English does
   * @param currencyCode ISO 4217
   */
  public PrintFormats(PrintLocale printLocale, String currencyCode) {
    LetterWording wording = LetterWording.of(printLocale.language());
    locale = new PrintLocale(wording.language(), printLocale.country()).toLocale();
    currency = Currency.getInstance(currencyCode);
    int digits = currency.getDefaultFractionDigits();
    money = (DecimalFormat) NumberFormat.getCurrencyInstance(locale);
    money.setCurrency(currency);
    amount = (DecimalFormat) NumberFormat.getNumberInstance(locale);
    for (DecimalFormat format : new DecimalFormat[] {money, amount}) {
      format.setMinimumFractionDigits(digits);
      format.setMaximumFractionDigits(digits);
      format.setRoundingMode(RoundingMode.HALF_UP);
    }
    percent = NumberFormat.getPercentInstance(locale);
    percent.setMaximumFractionDigits(3);
    longDate = DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale);
    shortDate = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
    month = DateTimeFormatter.ofPattern(wording.say("monthYear"), locale);
    boolean us = printLocale.country().equals("US");
    dayMonth = DateTimeFormatter.ofPattern(wording.say(us ? "dayMonth.US" : "dayMonth"), locale);
  }

  /** With the currency's sign; a sign of letters stands off from the figures. */
  public String money(BigDecimal value) {
    String sign = currencySign();
    String written = withMinus(money.format(value));
    int after = written.indexOf(sign) + sign.length();
    boolean touches =
        Character.isLetter(sign.charAt(sign.length() - 1))
            && after < written.length()
            && Character.isDigit(written.charAt(after));
    return touches ? written.substring(0, after) + '\u00A0' + written.substring(after) : written;
  }

  /** A hyphen is no minus: it is shorter, lower and may end a line. */
  private static String withMinus(String number) {
    return number.replace('-', '\u2212');
  }

  /** Without the currency's sign, for columns that carry it in their heading. */
  String amount(BigDecimal value) {
    return withMinus(amount.format(value));
  }

  /** The currency's sign as this country writes it. */
  String currencySign() {
    return currency.getSymbol(locale);
  }

  /** A percentage given as 20 for 20 %. */
  String percent(BigDecimal value) {
    return percent.format(value.divide(HUNDRED));
  }

  /** A date with its month in words. */
  public String longDate(LocalDate date) {
    return longDate.format(date);
  }

  String shortDate(LocalDate date) {
    return shortDate.format(date);
  }

  /** A month in words with its year. */
  public String month(YearMonth value) {
    return month.format(value);
  }

  /** The Monday of the week, without the year; it is not broken over lines. */
  String weekOf(LocalDate date) {
    LocalDate monday = date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    return dayMonth.format(monday).replace(' ', '\u00A0');
  }
}
