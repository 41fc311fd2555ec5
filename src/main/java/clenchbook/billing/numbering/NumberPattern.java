package clenchbook.billing.numbering;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The form of invoice numbers, such as {@code {yyyy}-{seq:4}}: {@code {yyyy}}, {@code {yy}}, {@code
 * {mm}} stand for the date, {@code {seq}} or {@code {seq:n}} for the sequence, padded to n digits.
 *
 * @param pattern the pattern; holds exactly one sequence
 */
public record NumberPattern(String pattern) {
  /** The pattern that stands when the farrier gives none. */
  public static final NumberPattern DEFAULT = new NumberPattern("{yyyy}-{seq:4}");

  private static final Pattern SEQUENCE = Pattern.compile("\\{seq(?::([1-9]))?\\}");
  private static final Pattern PART =
      Pattern.compile("\\{yyyy\\}|\\{yy\\}|\\{mm\\}|\\{seq(?::[1-9])?\\}");

  /**
   * Reads a pattern.
   *
   * @param text the setting
   * @return the pattern; empty when it holds no sequence or two, a stray brace or a character that
   *     no file name should bear
   */
  public static Optional<NumberPattern> parse(String text) {
    long sequences = SEQUENCE.matcher(text).results().count();
    String rest =
        SEQUENCE
            .matcher(text)
            .replaceAll("")
            .replace("{yyyy}", "")
            .replace("{yy}", "")
            .replace("{mm}", "");
    boolean clean = rest.chars().noneMatch(c -> "{}\\/:*?\"<>|".indexOf(c) >= 0 || c < ' ');
    return sequences == 1 && clean && text.length() <= 40
        ? Optional.of(new NumberPattern(text))
        : Optional.empty();
  }

  /**
   * What the sequence counts within.
   *
   * @param date the document's date
   * @return the year where the pattern holds it, else empty
   */
  public String series(LocalDate date) {
    boolean yearly = pattern.contains("{yyyy}") || pattern.contains("{yy}");
    return yearly ? String.format(Locale.ROOT, "%04d", date.getYear()) : "";
  }

  /**
   * Writes a number.
   *
   * @param date the document's date
   * @param sequence its place in the series
   * @return the number
   */
  public String number(LocalDate date, int sequence) {
    String dated =
        pattern
            .replace("{yyyy}", String.format(Locale.ROOT, "%04d", date.getYear()))
            .replace("{yy}", String.format(Locale.ROOT, "%02d", date.getYear() % 100))
            .replace("{mm}", String.format(Locale.ROOT, "%02d", date.getMonthValue()));
    Matcher matcher = SEQUENCE.matcher(dated);
    if (!matcher.find()) {
      throw new IllegalStateException("no sequence in " + pattern);
    }
    int digits = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
    String padded = String.format(Locale.ROOT, "%0" + digits + "d", sequence);
    return matcher.replaceFirst(padded);
  }

  /**
   * The place in its series of a number that this pattern may have given.
   *
   * @param text a number, or a text that begins with one and a space
   * @param year the year that the number must bear where the pattern holds a year
   * @return its sequence; empty when it is no number of this pattern and year
   */
  public OptionalInt sequence(String text, int year) {
    Matcher matcher = form(year).matcher(text.strip());
    if (!matcher.matches()) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(Integer.parseInt(matcher.group(1)));
    } catch (NumberFormatException tooLong) {
      return OptionalInt.empty();
    }
  }

  private Pattern form(int year) {
    Matcher parts = PART.matcher(pattern);
    StringBuilder form = new StringBuilder();
    int from = 0;
    while (parts.find()) {
      form.append(Pattern.quote(pattern.substring(from, parts.start())));
      form.append(
          switch (parts.group()) {
            case "{yyyy}" -> String.format(Locale.ROOT, "%04d", year);
            case "{yy}" -> String.format(Locale.ROOT, "%02d", year % 100);
            case "{mm}" -> "[0-9]{2}";
            default -> "([0-9]+)";
          });
      from = parts.end();
    }
    form.append(Pattern.quote(pattern.substring(from))).append("(?: .*)?");
    return Pattern.compile(
        form.toString(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);
  }
}
