package clenchbook.bankfiles;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** Small texts of bank files: squeezed, cut, and read as amounts and days. */
final class Texts {
  /** The most characters kept of any one text; a bank's longest is a few hundred. */
  static final int MOST = 1_000;

  private static final int LONGEST_NUMBER = 40;

  private Texts() {}

  /** One line: control characters and runs of blanks become one blank; cut at {@link #MOST}. */
  static String line(CharSequence text) {
    StringBuilder line = new StringBuilder(Math.min(text.length(), MOST));
    boolean blank = false;
    for (int at = 0; at < text.length() && line.length() < MOST; at++) {
      char c = text.charAt(at);
      if (c <= ' ' || c == '\u00a0' || c == '\u202f' || Character.isISOControl(c)) {
        blank = !line.isEmpty();
      } else {
        if (blank) {
          line.append(' ');
        }
        line.append(c);
        blank = false;
      }
    }
    return line.toString();
  }

  /** Two texts with a blank between them; one alone where the other is empty or within it. */
  static String joined(String one, String other) {
    if (other.isEmpty() || one.contains(other)) {
      return one;
    }
    return one.isEmpty() ? other : line(one + " " + other);
  }

  /** A decimal with a point, as XML schemas and OFX write it. */
  static Optional<BigDecimal> decimal(String text) {
    String bare = text.strip();
    if (bare.isEmpty() || bare.length() > LONGEST_NUMBER || bare.indexOf('e') >= 0) {
      return Optional.empty();
    }
    try {
      return bare.indexOf('E') >= 0 ? Optional.empty() : Optional.of(new BigDecimal(bare));
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }

  /** A day from eight digits, {@code 20261031}; what follows them does not matter. */
  static Optional<LocalDate> compactDay(String text) {
    if (text.length() < 8) {
      return Optional.empty();
    }
    return day(text, 0, 4, 4, 6, 6, 8);
  }

  /** A day from ISO 8601, {@code 2026-10-31}; a time and zone behind it do not matter. */
  static Optional<LocalDate> isoDay(String text) {
    String bare = text.strip();
    if (bare.length() < 10 || bare.charAt(4) != '-' || bare.charAt(7) != '-') {
      return Optional.empty();
    }
    return day(bare, 0, 4, 5, 7, 8, 10);
  }

  private static Optional<LocalDate> day(
      String text, int year, int yearEnd, int month, int monthEnd, int day, int dayEnd) {
    try {
      int years = Integer.parseInt(text, year, yearEnd, 10);
      int months = Integer.parseInt(text, month, monthEnd, 10);
      int days = Integer.parseInt(text, day, dayEnd, 10);
      return plausible(LocalDate.of(years, months, days));
    } catch (NumberFormatException | DateTimeException notADay) {
      return Optional.empty();
    }
  }

  /** A day that a bank statement can bear. */
  static Optional<LocalDate> plausible(LocalDate day) {
    return day.getYear() >= 1970 && day.getYear() < 2200 ? Optional.of(day) : Optional.empty();
  }
}
