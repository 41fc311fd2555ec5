package clenchbook.reading.formats.cells;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How a number is shown, as far as its meaning hangs on it.
 *
 * @param code the format as the file writes it, English letters; empty for the general one
 * @param kind what a number under this format means
 */
public record CellFormat(String code, Kind kind) {
  /** The format of a cell that asks for none. */
  public static final CellFormat GENERAL = new CellFormat("", Kind.PLAIN);

  /** What a number under a format means. */
  public enum Kind {
    /** A number. */
    PLAIN,
    /** A hundredth: 0.3 is shown as 30%. */
    PERCENT,
    /** A number shown as a common fraction, as 5/16. */
    FRACTION,
    /** A day, perhaps with a time. */
    DATE,
    /** A time of day or a length of time. */
    TIME
  }

  /**
   * The formats that a file names by number only. ECMA-376 part 1, 18.8.30 (from memory), with the
   * numbers that East Asian editions use for dates and times.
   */
  private static final Map<Integer, String> BUILT_IN =
      Map.ofEntries(
          Map.entry(1, "0"),
          Map.entry(2, "0.00"),
          Map.entry(3, "#,##0"),
          Map.entry(4, "#,##0.00"),
          Map.entry(9, "0%"),
          Map.entry(10, "0.00%"),
          Map.entry(11, "0.00E+00"),
          Map.entry(12, "# ?/?"),
          Map.entry(13, "# ??/??"),
          Map.entry(14, "m/d/yy"),
          Map.entry(15, "d-mmm-yy"),
          Map.entry(16, "d-mmm"),
          Map.entry(17, "mmm-yy"),
          Map.entry(18, "h:mm AM/PM"),
          Map.entry(19, "h:mm:ss AM/PM"),
          Map.entry(20, "h:mm"),
          Map.entry(21, "h:mm:ss"),
          Map.entry(22, "m/d/yy h:mm"),
          Map.entry(45, "mm:ss"),
          Map.entry(46, "[h]:mm:ss"),
          Map.entry(47, "mm:ss.0"),
          Map.entry(49, "@"));

  /** The format of a built-in number; the general one for a number that has none. */
  public static CellFormat builtIn(int number) {
    if (number >= 27 && number <= 58 && (number <= 36 || number >= 50)) {
      boolean time = (number >= 32 && number <= 35) || number == 55 || number == 56;
      return of(time ? "h:mm" : "yyyy/m/d");
    }
    String code = BUILT_IN.get(number);
    return code == null ? GENERAL : of(code);
  }

  /** The format of a code such as {@code dd/mm/yyyy} or {@code [h]:mm}. */
  public static CellFormat of(String code) {
    String bare = bare(code).toLowerCase(Locale.ROOT);
    if (bare.isEmpty() || bare.equals("general") || bare.equals("standard")) {
      return new CellFormat(code, Kind.PLAIN);
    }
    return new CellFormat(code, kind(bare));
  }

  /** Whether a date under this format shows its day of the month. */
  public boolean showsDay() {
    return bare(code).toLowerCase(Locale.ROOT).indexOf('d') >= 0;
  }

  /**
   * The format of a number that a file gives a code for. Those of money in the currency of whoever
   * looks say nothing of a currency, whatever sign was shown where the file was saved.
   */
  public static CellFormat numbered(int number, String code) {
    boolean anyCurrency = (number >= 5 && number <= 8) || (number >= 37 && number <= 44);
    return of(anyCurrency ? "#,##0.00" : code);
  }

  /** The sign or code of a currency, or another word, that the format shows beside its number. */
  public Optional<String> currencySign() {
    return FormatLiterals.of(code).currencySign();
  }

  /** What the format shows behind its number: a unit, perhaps. */
  public Optional<String> unit() {
    return FormatLiterals.of(code).behind();
  }

  private static Kind kind(String bare) {
    if (bare.indexOf('%') >= 0) {
      return Kind.PERCENT;
    }
    boolean digits = bare.indexOf('#') >= 0 || bare.indexOf('?') >= 0;
    if (digits) {
      return bare.indexOf('/') > 0 ? Kind.FRACTION : Kind.PLAIN;
    }
    String marks = bare.replace("am/pm", "h").replace("a/p", "h");
    return isOfTime(marks) ? timeKind(marks) : Kind.PLAIN;
  }

  /** Only letters of dates and times, and no digit but the fraction of a second. */
  private static boolean isOfTime(String marks) {
    boolean some = false;
    for (int i = 0; i < marks.length(); i++) {
      char c = marks.charAt(i);
      boolean unit = "ymdhs".indexOf(c) >= 0;
      boolean other = "tegbn".indexOf(c) >= 0 || !Character.isLetter(c) || c > 0x2E80;
      boolean fraction =
          c == '0' && i > 0 && (marks.charAt(i - 1) == '.' || marks.charAt(i - 1) == '0');
      if ((!unit && !other) || (c == '0' && !fraction)) {
        return false;
      }
      some |= unit;
    }
    return some;
  }

  private static Kind timeKind(String marks) {
    boolean day = marks.indexOf('y') >= 0 || marks.indexOf('d') >= 0 || marks.contains("mmm");
    boolean clock = marks.indexOf('h') >= 0 || marks.indexOf('s') >= 0 || marks.contains("[m");
    return day || !clock ? Kind.DATE : Kind.TIME;
  }

  /** The first section without quoted texts, escaped letters, colours, currencies, conditions. */
  private static String bare(String code) {
    StringBuilder bare = new StringBuilder(code.length());
    for (int i = 0; i < code.length() && code.charAt(i) != ';'; i++) {
      char c = code.charAt(i);
      if (c == '"') {
        i = endOf(code, i, '"');
      } else if (c == '[') {
        int end = endOf(code, i, ']');
        String inner = code.substring(i + 1, Math.max(i + 1, end)).toLowerCase(Locale.ROOT);
        bare.append(inner.matches("h+|m+|s+") ? "[" + inner + "]" : "");
        i = end;
      } else if (c == '\\' || c == '_' || c == '*') {
        i++;
      } else {
        bare.append(c);
      }
    }
    return bare.toString().strip();
  }

  private static int endOf(String code, int from, char mark) {
    int end = code.indexOf(mark, from + 1);
    return end < 0 ? code.length() - 1 : end;
  }
}
