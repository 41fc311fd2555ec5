package clenchbook.delivery.message;

/**
 * Text that is to stand in a mail header: a subject, a name, a file name.
 *
 * <p>A line break inside such a text would let it write headers of its own (RFC 5322, section 2.2),
 * and a direction mark lets a name read as another. Both are refused where a message is built;
 * {@link #clean} makes a text from the workbook fit beforehand.
 */
public final class HeaderText {
  private static final int LONGEST = 400;

  private HeaderText() {}

  /**
   * Whether the text may stand in a header: no control character (CR, LF, NUL and tab among them),
   * no line or paragraph separator, no direction mark, no half of a surrogate pair.
   *
   * @param text any text
   */
  public static boolean isSafe(String text) {
    return text.codePoints().noneMatch(HeaderText::isDangerous);
  }

  /**
   * The text with white space of every kind, line breaks included, as single blanks and with the
   * characters that {@link #isSafe} refuses left out; at most 400 characters.
   *
   * @param text any text
   */
  public static String clean(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .map(point -> isBreak(point) ? ' ' : point)
        .filter(point -> !isDangerous(point))
        .limit(LONGEST)
        .forEach(kept::appendCodePoint);
    return kept.toString().replaceAll(" {2,}", " ").strip();
  }

  /**
   * The text itself, once it is known to be safe.
   *
   * @param what what the text is, for the message of the fault
   * @throws IllegalArgumentException where {@link #isSafe} says no; the message leaves the text out
   */
  static String requireSafe(String what, String text) {
    if (!isSafe(text)) {
      throw new IllegalArgumentException(
          what + " holds a control character or a direction mark; no header may");
    }
    return text;
  }

  private static boolean isBreak(int point) {
    return point == '\t' || point == '\r' || point == '\n' || point == 0x2028 || point == 0x2029;
  }

  private static boolean isDangerous(int point) {
    return Character.isISOControl(point)
        || point == 0x2028
        || point == 0x2029
        || isDirectionMark(point)
        || (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE);
  }

  private static boolean isDirectionMark(int point) {
    return point == 0x061C
        || point == 0x200E
        || point == 0x200F
        || (point >= 0x202A && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069);
  }
}
