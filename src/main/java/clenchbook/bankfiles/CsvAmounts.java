package clenchbook.bankfiles;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Money in a bank's CSV, with either decimal mark: the last mark with one or two digits behind it
 * is the decimal mark, one with three groups thousands (money has no third decimal in the
 * currencies that farriers are paid in).
 */
final class CsvAmounts {
  private static final int LONGEST = 40;
  private static final Pattern MONEY =
      Pattern.compile(
          "\\d{1,3}(?:[.,' ]\\d{3})*(?:[.,]\\d{1,2})?|\\d+(?:[.,]\\d{1,4})?|[.,]\\d{1,2}");

  /** What marks money out and money in, in a column of its own. */
  private static final Map<String, Integer> SIGNS =
      Map.ofEntries(
          Map.entry("d", -1),
          Map.entry("dr", -1),
          Map.entry("dbit", -1),
          Map.entry("debit", -1),
          Map.entry("débit", -1),
          Map.entry("s", -1),
          Map.entry("soll", -1),
          Map.entry("debe", -1),
          Map.entry("cargo", -1),
          Map.entry("af", -1),
          Map.entry("debet", -1),
          Map.entry("-", -1),
          Map.entry("out", -1),
          Map.entry("c", 1),
          Map.entry("cr", 1),
          Map.entry("crdt", 1),
          Map.entry("credit", 1),
          Map.entry("crédit", 1),
          Map.entry("h", 1),
          Map.entry("haben", 1),
          Map.entry("haber", 1),
          Map.entry("abono", 1),
          Map.entry("bij", 1),
          Map.entry("+", 1),
          Map.entry("in", 1));

  private CsvAmounts() {}

  /** The sign that a word stands for: 1 money in, -1 money out; empty for another word. */
  static Optional<Integer> sign(String word) {
    return Optional.ofNullable(SIGNS.get(word.strip().toLowerCase(Locale.ROOT)));
  }

  /** An amount with or without sign, currency and grouping; empty where it is none. */
  static Optional<BigDecimal> read(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String bare = text.replaceAll("[\\p{L}\\p{Sc}\\s\\u00a0\\u202f\\u2009]", "").replace('’', '\'');
    bare = bare.replace('−', '-').replace('–', '-');
    boolean brackets = bare.startsWith("(") && bare.endsWith(")");
    String inner = brackets ? bare.substring(1, bare.length() - 1) : bare;
    boolean minus = inner.startsWith("-") || inner.endsWith("-");
    String digits = inner.replaceFirst("^[+-]", "").replaceFirst("[+-]$", "");
    if (!MONEY.matcher(digits).matches()) {
      return Optional.empty();
    }
    BigDecimal size = new BigDecimal(plain(digits));
    return Optional.of(minus != brackets ? size.negate() : size);
  }

  private static String plain(String digits) {
    int last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
    int behind = digits.length() - last - 1;
    char mark = last < 0 ? ' ' : digits.charAt(last);
    boolean again = last > 0 && digits.lastIndexOf(mark, last - 1) >= 0;
    boolean decimal = last >= 0 && !again && (behind != 3 || digits.substring(0, last).equals("0"));
    String whole = decimal ? digits.substring(0, last) : digits;
    String rest = decimal ? "." + digits.substring(last + 1) : "";
    String bare = whole.replaceAll("[^0-9]", "");
    return (bare.isEmpty() ? "0" : bare) + rest;
  }
}
