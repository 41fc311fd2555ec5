package clenchbook.reading.cells;

import clenchbook.values.Fraction;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Numbers with a unit behind them: {@code 13 1/2 in}, {@code 10 km}, {@code 5' 6"}, {@code 1,5 kg}.
 * Several parts add up.
 */
public final class MeasureText {
  private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔";
  private static final String[] VULGAR_PLAIN = {
    "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3"
  };
  private static final int MOST_PARTS = 3;
  private static final int LONGEST = 60;

  private final NumberText numbers;

  /** Reads by the marks of a locale. */
  public MeasureText(NumberText numbers) {
    this.numbers = numbers;
  }

  /** A number alone, which may be a shop fraction such as 13 1/2. */
  Optional<NumberText.Reading> number(String text) {
    Optional<NumberText.Reading> plain = numbers.read(text);
    if (plain.isPresent() || text.length() > LONGEST) {
      return plain;
    }
    return Fraction.parse(spelledOut(text)).map(value -> new NumberText.Reading(value, false));
  }

  private static String spelledOut(String text) {
    StringBuilder plain = new StringBuilder();
    for (char c : text.toCharArray()) {
      int vulgar = VULGAR.indexOf(c);
      plain.append(vulgar < 0 ? String.valueOf(c) : " " + VULGAR_PLAIN[vulgar]);
    }
    return plain.toString();
  }

  /** The number in the column's own unit; empty where none stands there, or in a foreign unit. */
  public Optional<NumberText.Reading> read(String text, Measure own) {
    String bare = text.strip();
    if (bare.isEmpty() || bare.length() > LONGEST) {
      return Optional.empty();
    }
    Optional<NumberText.Reading> plain = number(bare);
    return plain.isPresent() ? plain : withUnits(bare, own);
  }

  private Optional<NumberText.Reading> withUnits(String text, Measure own) {
    BigDecimal sum = BigDecimal.ZERO;
    boolean otherMark = false;
    int parts = 0;
    for (int at = 0; at < text.length(); parts++) {
      int unitAt = endOfNumber(text, at);
      int next = endOfUnit(text, unitAt, own);
      Optional<NumberText.Reading> number = number(text.substring(at, unitAt).strip());
      String unit = text.substring(unitAt, next);
      Optional<BigDecimal> value = number.flatMap(found -> own.convert(found.value(), unit));
      if (value.isEmpty() || parts == MOST_PARTS) {
        return Optional.empty();
      }
      sum = sum.add(value.get());
      otherMark |= number.map(NumberText.Reading::otherMark).orElse(false);
      at = next;
    }
    return Optional.of(new NumberText.Reading(sum, otherMark));
  }

  private static int endOfNumber(String text, int from) {
    int at = from;
    while (at < text.length() && isOfNumber(text.charAt(at), at == from)) {
      at++;
    }
    return at;
  }

  private static boolean isOfNumber(char c, boolean first) {
    boolean sign = first && (c == '-' || c == '−' || c == '+');
    boolean space = c == ' ' || Character.isSpaceChar(c);
    return Character.isDigit(c) || ".,/".indexOf(c) >= 0 || VULGAR.indexOf(c) >= 0 || sign || space;
  }

  /** A unit ends where the next number begins, unless the digit is part of it, as in m/s2. */
  private static int endOfUnit(String text, int from, Measure own) {
    if (own.knows(text.substring(from))) {
      return text.length();
    }
    int at = from;
    while (at < text.length() && !Character.isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** Whether a number and a unit of this kind stand there, and not a number alone. */
  boolean isIn(String text, Measure own) {
    return numbers.read(text).isEmpty() && read(text, own).isPresent() && isWithUnit(text);
  }

  /** Whether a number stands first and something else behind it: a unit that is not known here. */
  boolean isWithUnit(String text) {
    String bare = text.strip();
    int end = bare.length() > LONGEST ? 0 : endOfNumber(bare, 0);
    return end > 0 && end < bare.length() && number(bare.substring(0, end).strip()).isPresent();
  }
}
