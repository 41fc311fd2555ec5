package clenchbook.reading.cells;

import clenchbook.book.Counted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lists such as {@code 0: 2; 00: 2} and {@code pads 2; studs 8}. */
final class PartsText {
  private static final Pattern BETWEEN = Pattern.compile("\\s*(?:;|\\R|\\+|&|,(?=\\s|\\D))\\s*");
  private static final Pattern COUNT_AFTER =
      Pattern.compile("(.+?)\\s*(?:[:=]\\s*|\\s[x×]\\s*|\\s*\\()(\\d{1,2})\\)?");
  private static final Pattern COUNT_BEFORE = Pattern.compile("(\\d{1,2})\\s*[x×]\\s+(.+)");
  private static final Pattern BARE_AFTER = Pattern.compile("(.*\\p{L}.*?)\\s+(\\d{1,2})");
  private static final Pattern BARE_BEFORE = Pattern.compile("(\\d{1,2})\\s+(.*\\p{L}.*)");

  private PartsText() {}

  /** Sizes: a count needs a colon, since {@code 4x0} and {@code 2} are sizes. */
  static List<Counted> sizes(String text) {
    return split(text, PartsText::marked);
  }

  /** Shoes: a count needs a colon or a cross, since a shoe's name may end in a number. */
  static List<Counted> shoes(String text) {
    return split(text, PartsText::marked);
  }

  /** Extras: a number behind or before the name is its count. */
  static List<Counted> extras(String text) {
    return split(
        text,
        part -> marked(part).or(() -> after(BARE_AFTER, part)).or(() -> before(BARE_BEFORE, part)));
  }

  private static List<Counted> split(String text, Function<String, Optional<Counted>> counted) {
    List<Counted> parts = new ArrayList<>();
    for (String written : BETWEEN.split(text)) {
      String part = written.strip();
      if (!part.isEmpty()) {
        parts.add(counted.apply(part).orElse(new Counted(part, Optional.empty())));
      }
    }
    return parts;
  }

  private static Optional<Counted> marked(String part) {
    return after(COUNT_AFTER, part).or(() -> before(COUNT_BEFORE, part));
  }

  private static Optional<Counted> after(Pattern form, String part) {
    Matcher found = form.matcher(part);
    return found.matches() ? counted(found.group(1), found.group(2)) : Optional.empty();
  }

  private static Optional<Counted> before(Pattern form, String part) {
    Matcher found = form.matcher(part);
    return found.matches() ? counted(found.group(2), found.group(1)) : Optional.empty();
  }

  private static Optional<Counted> counted(String name, String digits) {
    int count = Integer.parseInt(digits);
    return count == 0
        ? Optional.empty()
        : Optional.of(new Counted(name.strip(), Optional.of(count)));
  }
}
