package clenchbook.bankfiles;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Days in a bank's CSV. ISO days and days with dots have one reading; with other marks the column's
 * own days tell whether the month stands first, else the book does. Not thread-safe.
 */
final class CsvDays {
  private static final Pattern THREE =
      Pattern.compile("^(\\d{1,4})\\s?([./-])\\s?(\\d{1,2})\\s?[./-]\\s?(\\d{2,4})(?:[ T].*)?$");
  private static final Pattern NAMED =
      Pattern.compile("^(\\d{1,2})[ .-]+(\\p{L}{3,10})\\.?[ .,-]+(\\d{2,4})$");
  private static final Pattern NAMED_FIRST =
      Pattern.compile("^(\\p{L}{3,10})\\.? (\\d{1,2}),? (\\d{4})$");
  private static final String[] MONTHS = {
    "jan ene", "feb fev fév", "mar mär mrt mae", "apr avr abr", "may mai mei", "jun jui",
    "jul", "aug aoû aou ago", "sep", "oct okt", "nov", "dec dez déc dic"
  };

  private boolean dayFirstSeen;
  private boolean monthFirstSeen;

  /** Looks at a day before any is read, for what it tells of the order. */
  void witness(String text) {
    Matcher three = THREE.matcher(text.strip());
    if (three.matches() && !three.group(2).equals(".") && three.group(1).length() <= 2) {
      dayFirstSeen |= Integer.parseInt(three.group(1)) > 12;
      monthFirstSeen |= Integer.parseInt(three.group(3)) > 12;
    }
  }

  /** Whether the file's own days settle the order. */
  boolean told() {
    return dayFirstSeen != monthFirstSeen;
  }

  /** Reads a day; empty where it is none. */
  Optional<LocalDate> read(String text, boolean monthFirst) {
    String bare = text.strip();
    if (bare.length() > 40 || bare.length() < 6) {
      return Optional.empty();
    }
    Optional<LocalDate> iso = Texts.isoDay(bare);
    if (iso.isPresent()) {
      return iso;
    }
    if (bare.matches("\\d{8}")) {
      return Texts.compactDay(bare);
    }
    Matcher three = THREE.matcher(bare);
    if (three.matches()) {
      return three(three, told() ? monthFirstSeen : monthFirst);
    }
    return named(bare);
  }

  private static Optional<LocalDate> three(Matcher found, boolean monthFirst) {
    int first = Integer.parseInt(found.group(1));
    int second = Integer.parseInt(found.group(3));
    int third = Integer.parseInt(found.group(4));
    if (found.group(1).length() > 2) {
      return day(first, second, third);
    }
    boolean swap = monthFirst && !found.group(2).equals(".");
    return day(third, swap ? first : second, swap ? second : first);
  }

  private static Optional<LocalDate> named(String text) {
    Matcher last = NAMED.matcher(text);
    if (last.matches()) {
      return month(last.group(2))
          .flatMap(
              month ->
                  day(Integer.parseInt(last.group(3)), month, Integer.parseInt(last.group(1))));
    }
    Matcher first = NAMED_FIRST.matcher(text);
    if (first.matches()) {
      return month(first.group(1))
          .flatMap(
              month ->
                  day(Integer.parseInt(first.group(3)), month, Integer.parseInt(first.group(2))));
    }
    return Optional.empty();
  }

  private static Optional<Integer> month(String name) {
    String lower = name.toLowerCase(java.util.Locale.ROOT);
    if (lower.startsWith("juil")) {
      return Optional.of(7);
    }
    for (int month = 0; month < MONTHS.length; month++) {
      for (String begin : MONTHS[month].split(" ")) {
        if (lower.startsWith(begin)) {
          return Optional.of(month + 1);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDate> day(int year, int month, int day) {
    int full = year < 100 ? year + (year < 70 ? 2000 : 1900) : year;
    try {
      return Texts.plausible(LocalDate.of(full, month, day));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }
}
