package clenchbook.reading.cells;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Numbers written as text, by the decimal mark of the book's locale. A text that has only one
 * reading, as 85,50 where the point is the decimal mark, is read and says so.
 */
public final class NumberText {
  private static final int LONGEST = 40;
  private static final Pattern SPACED =
      Pattern.compile("\\d{1,3}(?:[\\s\\u00a0\\u202f\\u2009'’]\\d{3})+(?=$|[.,])");
  private static final Pattern GROUPS_OF_THREE =
      Pattern.compile("[1-9]\\d{0,2}(?:\\D\\d{2,3})*\\D\\d{3}");
  private static final Pattern MARKED = Pattern.compile("[0-9]*[.,]?[0-9][0-9.,]*");

  private static final Pattern ONE_OR_THOUSAND = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");

  private final char decimalMark;

  /** Reads by the marks of a locale. */
  public NumberText(Locale locale) {
    this.decimalMark =
        DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',' ? ',' : '.';
  }

  /**
   * A number read.
   *
   * @param otherMark true when its decimal mark is not the book's
   */
  public record Reading(BigDecimal value, boolean otherMark) {
    Reading negated() {
      return new Reading(value.negate(), otherMark);
    }
  }

  /** Reads a bare number with an optional sign; brackets around it mean less than nothing. */
  public Optional<Reading> read(String text) {
    String bare = ascii(text.strip());
    if (bare.isEmpty() || bare.length() > LONGEST) {
      return Optional.empty();
    }
    if (bare.startsWith("(") && bare.endsWith(")")) {
      return unsigned(bare.substring(1, bare.length() - 1).strip()).map(Reading::negated);
    }
    if (bare.startsWith("-")) {
      return unsigned(bare.substring(1).strip()).map(Reading::negated);
    }
    if (bare.endsWith("-")
        && bare.length() > 1
        && Character.isDigit(bare.charAt(bare.length() - 2))) {
      return unsigned(bare.substring(0, bare.length() - 1).strip()).map(Reading::negated);
    }
    return unsigned(bare.startsWith("+") ? bare.substring(1).strip() : bare);
  }

  /** Digits of any script and the true minus sign as plain ones. */
  private static String ascii(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (char c : text.toCharArray()) {
      int digit = Character.digit(c, 10);
      boolean isDigit = Character.isDigit(c) && digit >= 0;
      plain.append(isDigit ? (char) ('0' + digit) : c == '−' || c == '–' ? '-' : c);
    }
    return plain.toString();
  }

  private Optional<Reading> unsigned(String text) {
    String digits = ungroupSpaces(withoutDash(text));
    if (!MARKED.matcher(digits).matches()) {
      return Optional.empty();
    }
    int points = count(digits, '.');
    int commas = count(digits, ',');
    if (points + commas == 0) {
      return value(digits, false);
    }
    if (points > 0 && commas > 0) {
      return bothMarks(digits);
    }
    char mark = points > 0 ? '.' : ',';
    return points + commas > 1 ? grouped(digits, mark) : oneMark(digits, mark);
  }

  /** {@code 85.-} and {@code 85,--}: nothing after the mark. */
  private static String withoutDash(String text) {
    return text.replaceFirst("[.,][-—]{1,2}$", "");
  }

  private static String ungroupSpaces(String text) {
    return SPACED.matcher(text).replaceFirst(found -> found.group().replaceAll("\\D", ""));
  }

  private Optional<Reading> bothMarks(String digits) {
    char decimal = digits.lastIndexOf('.') > digits.lastIndexOf(',') ? '.' : ',';
    int at = digits.lastIndexOf(decimal);
    String whole = digits.substring(0, at);
    if (whole.indexOf(decimal) >= 0 || !GROUPS_OF_THREE.matcher(whole).matches()) {
      return Optional.empty();
    }
    return value(
        whole.replaceAll("\\D", "") + "." + digits.substring(at + 1), decimal != decimalMark);
  }

  private Optional<Reading> grouped(String digits, char mark) {
    return GROUPS_OF_THREE.matcher(digits).matches()
        ? value(digits.replaceAll("\\D", ""), mark == decimalMark)
        : Optional.empty();
  }

  private Optional<Reading> oneMark(String digits, char mark) {
    if (mark != decimalMark && GROUPS_OF_THREE.matcher(digits).matches()) {
      return value(digits.replaceAll("\\D", ""), false);
    }
    return value(digits.replace(',', '.'), mark != decimalMark);
  }

  /** Whether the only mark of a number is the decimal one, and three figures stand behind it. */
  boolean isOneOrThousand(String digits) {
    String bare = ascii(digits.strip());
    int mark = bare.indexOf(decimalMark);
    return mark > 0 && mark == bare.length() - 4 && ONE_OR_THOUSAND.matcher(bare).matches();
  }

  private static Optional<Reading> value(String digits, boolean otherMark) {
    try {
      return Optional.of(new Reading(plain(new BigDecimal(digits)), otherMark));
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal bare = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }

  private static int count(String text, char mark) {
    return (int) text.chars().filter(c -> c == mark).count();
  }
}
