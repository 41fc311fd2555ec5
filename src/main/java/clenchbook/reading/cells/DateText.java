package clenchbook.reading.cells;

import clenchbook.reading.words.DateWords;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Days written as text. ISO 8601 forms have one reading everywhere; three bare numbers are read in
 * the book's order, or in the only order that makes a day of them; a month's name settles it too.
 */
public final class DateText {
  /** How three numbers are ordered. */
  public enum Order {
    /** Day, month, year. */
    DMY,
    /** Month, day, year. */
    MDY,
    /** Year, month, day. */
    YMD
  }

  /**
   * What a text may mean.
   *
   * @param days the days it may mean: none = no day, several = ambiguous
   * @param otherOrder true when the one day it can mean is not in the book's order
   */
  public record Reading(List<LocalDate> days, boolean otherOrder) {
    static final Reading NONE = new Reading(List.of(), false);

    static Reading of(LocalDate day) {
      return new Reading(List.of(day), false);
    }
  }

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;
  private static final int LONGEST = 60;
  private static final Pattern CLOCK =
      Pattern.compile(
          "[T ]+\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?\\s*(?:[AaPp]\\.?[Mm]\\.?)?"
              + "\\s*(?:Z|[+-]\\d{2}:?\\d{2})?$");
  private static final Pattern DOTTED =
      Pattern.compile("\\d{1,2}\\.\\s?\\d{1,2}\\.\\s?\\d{2,4}\\.?");
  private static final Pattern TOKEN = Pattern.compile("\\p{L}+|\\d+");
  private static final DateTimeFormatter WEEK =
      DateTimeFormatter.ISO_WEEK_DATE.withResolverStyle(ResolverStyle.STRICT);
  private static final DateTimeFormatter ORDINAL =
      DateTimeFormatter.ISO_ORDINAL_DATE.withResolverStyle(ResolverStyle.STRICT);

  private DateText() {}

  /** Reads a text as a day. */
  public static Reading read(String text, Optional<Order> order) {
    String bare = CLOCK.matcher(text.strip()).replaceFirst("").strip();
    if (bare.isEmpty() || bare.length() > LONGEST) {
      return Reading.NONE;
    }
    Optional<LocalDate> iso = iso(bare);
    if (iso.isPresent()) {
      return Reading.of(iso.get());
    }
    List<String> tokens = withoutWeekday(tokens(bare));
    if (order.isEmpty() && isDotted(bare)) {
      Reading dayFirst = of(inOrder(tokens, Order.DMY));
      return dayFirst.days().isEmpty() ? threeParts(tokens, order) : dayFirst;
    }
    return tokens.size() == 3 ? threeParts(tokens, order) : Reading.NONE;
  }

  /** Dots part day, month and year where the day comes first. */
  private static boolean isDotted(String text) {
    int digit = 0;
    while (digit < text.length() && !Character.isDigit(text.charAt(digit))) {
      digit++;
    }
    return text.indexOf('.') > 0 && DOTTED.matcher(text.substring(digit)).matches();
  }

  /**
   * The only order in which three numbers make a day.
   *
   * @return empty where both orders do, or neither, or the year comes first
   */
  static Optional<Order> onlyOrder(String text) {
    String bare = CLOCK.matcher(text.strip()).replaceFirst("").strip();
    List<String> parts = bare.length() > LONGEST ? List.of() : withoutWeekday(tokens(bare));
    boolean threeNumbers =
        parts.size() == 3
            && parts.stream().allMatch(part -> part.length() <= 4 && isNumber(part))
            && parts.get(0).length() <= 2;
    if (!threeNumbers || !iso(bare).isEmpty()) {
      return Optional.empty();
    }
    boolean dayFirst = inOrder(parts, Order.DMY).isPresent();
    boolean monthFirst = inOrder(parts, Order.MDY).isPresent();
    if (dayFirst == monthFirst) {
      return Optional.empty();
    }
    return Optional.of(dayFirst ? Order.DMY : Order.MDY);
  }

  static boolean isNumber(String part) {
    return Character.isDigit(part.charAt(0));
  }

  private static Optional<LocalDate> iso(String text) {
    if (text.matches("\\d{8}")) {
      return day(number(text, 0, 4), number(text, 4, 6), number(text, 6, 8));
    }
    if (text.matches("\\d{4}-W\\d{2}-\\d")) {
      return parsed(text, WEEK);
    }
    return text.matches("\\d{4}-\\d{3}") ? parsed(text, ORDINAL) : Optional.empty();
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text.substring(from, to));
  }

  private static Optional<LocalDate> parsed(String text, DateTimeFormatter form) {
    try {
      return Optional.of(LocalDate.parse(text, form)).filter(DateText::plausible);
    } catch (DateTimeException notADay) {
      return Optional.empty();
    }
  }

  /** The numbers and month of a text; empty where anything else stands in it. */
  static List<String> tokens(String text) {
    String between = TOKEN.matcher(text).replaceAll("");
    if (!between.matches("[\\s/.,’'\\-–]*")) {
      return List.of();
    }
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    while (matcher.find()) {
      String token = matcher.group().toLowerCase(Locale.ROOT);
      boolean digits = Character.isDigit(token.charAt(0));
      if (digits || month(token).isPresent()) {
        tokens.add(token);
      } else if (!DateWords.isFiller(token) && !(tokens.isEmpty() && isWeekday(token))) {
        return List.of();
      }
    }
    return tokens;
  }

  /**
   * A short word before three numbers is a weekday, even where it may be a month, as "mar." may.
   */
  private static List<String> withoutWeekday(List<String> tokens) {
    boolean wordFirst = tokens.size() == 4 && !Character.isDigit(tokens.get(0).charAt(0));
    return wordFirst ? tokens.subList(1, 4) : tokens;
  }

  private static boolean isWeekday(String word) {
    return DateWords.isWeekday(word)
        || (word.length() > 3 && DateWords.isWeekday(word.substring(0, 3)));
  }

  /** The month of a name; a weekday before the day ("Tue", "Dienstag") is no month. */
  public static Optional<Integer> month(String name) {
    return DateWords.month(name);
  }

  private static Reading threeParts(List<String> parts, Optional<Order> order) {
    for (String part : parts) {
      if (part.length() > 4 && Character.isDigit(part.charAt(0))) {
        return Reading.NONE;
      }
    }
    long words = parts.stream().filter(part -> !Character.isDigit(part.charAt(0))).count();
    if (words > 1) {
      return Reading.NONE;
    }
    return words == 1 ? withMonthName(parts, order) : threeNumbers(parts, order);
  }

  private static Reading withMonthName(List<String> parts, Optional<Order> order) {
    List<String> numbers = new ArrayList<>();
    int month = 0;
    for (String part : parts) {
      Optional<Integer> named = Character.isDigit(part.charAt(0)) ? Optional.empty() : month(part);
      if (named.isPresent()) {
        month = named.get();
      } else {
        numbers.add(part);
      }
    }
    boolean yearFirst =
        numbers.get(0).length() > 2
            || (numbers.get(1).length() <= 2 && order.equals(Optional.of(Order.YMD)));
    String year = numbers.get(yearFirst ? 0 : 1);
    String day = numbers.get(yearFirst ? 1 : 0);
    return of(day(year(year), month, Integer.parseInt(day)));
  }

  private static Reading of(Optional<LocalDate> day) {
    return day.map(Reading::of).orElse(Reading.NONE);
  }

  private static Reading threeNumbers(List<String> parts, Optional<Order> order) {
    if (parts.get(0).length() > 2) {
      return of(inOrder(parts, Order.YMD));
    }
    Optional<LocalDate> own = order.flatMap(wanted -> inOrder(parts, wanted));
    if (own.isPresent()) {
      return Reading.of(own.get());
    }
    Set<LocalDate> days = new TreeSet<>();
    inOrder(parts, Order.DMY).ifPresent(days::add);
    inOrder(parts, Order.MDY).ifPresent(days::add);
    return new Reading(List.copyOf(days), order.isPresent() && days.size() == 1);
  }

  private static Optional<LocalDate> inOrder(List<String> parts, Order order) {
    String yearPart = parts.get(order == Order.YMD ? 0 : 2);
    boolean yearElsewhere = parts.get(order == Order.YMD ? 2 : 0).length() > 2;
    if (yearElsewhere || parts.get(1).length() > 2) {
      return Optional.empty();
    }
    int month = Integer.parseInt(parts.get(order == Order.MDY ? 0 : 1));
    int day = Integer.parseInt(parts.get(order == Order.DMY ? 0 : order == Order.MDY ? 1 : 2));
    return day(year(yearPart), month, day);
  }

  /** Two digits mean 2000 to 2069 or 1970 to 1999; one alone is a slip, and no year. */
  private static int year(String digits) {
    if (digits.length() < 2) {
      return 0;
    }
    int year = Integer.parseInt(digits);
    return digits.length() > 2 ? year : year + (year < 70 ? 2000 : 1900);
  }

  private static Optional<LocalDate> day(int year, int month, int day) {
    try {
      return Optional.of(LocalDate.of(year, month, day)).filter(DateText::plausible);
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** Whether a day can stand in a farrier's book at all. */
  public static boolean plausible(LocalDate day) {
    return day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR;
  }
}
