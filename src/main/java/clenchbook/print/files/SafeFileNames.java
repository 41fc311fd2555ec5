package clenchbook.print.files;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Makes names from a workbook into file names that every system takes, no two alike in one folder.
 *
 * <p>Control characters and direction marks are dropped, signs that a system reserves become a
 * blank, a letter that this machine's files can't bear is written in plain ones, a device's name
 * gets an underscore, a long name is cut to 100 characters with its ending. Two names that would
 * coincide ignoring case are told apart by a number, in the order they are asked for. Not
 * thread-safe.
 */
public final class SafeFileNames {
  private static final int LONGEST = 100;

  /** File systems count bytes where the farrier counts letters. */
  private static final int MOST_BYTES = 240;

  private static final Pattern RESERVED_SIGNS = Pattern.compile("[/\\\\:*?\"<>|]");
  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");
  private static final Pattern EDGES = Pattern.compile("^[. ]+|[. ]+$");
  private static final Pattern DEVICE =
      Pattern.compile(
          "(con|prn|aux|nul|conin\\$|conout\\$|(com|lpt)[0-9\u00B9\u00B2\u00B3])",
          Pattern.CASE_INSENSITIVE);

  private final Set<String> taken = new HashSet<>();

  /**
   * Whether a name holds what no file name may, and is told to the farrier: control characters or
   * direction marks.
   *
   * @param name a name from the workbook
   * @return true when something is dropped from it
   */
  public static boolean dropsFrom(String name) {
    return name.codePoints().anyMatch(SafeFileNames::isDropped);
  }

  /**
   * A file name for these words.
   *
   * @param words such as an invoice number and an owner
   * @param ending such as {@code .pdf}
   * @return a name not given before, ignoring case
   */
  public String name(String words, String ending) {
    String stem = clean(words);
    String name = cut(stem, LONGEST - ending.length()) + ending;
    for (int number = 2; !taken.add(folded(name)); number++) {
      String end = " " + number + ending;
      name = cut(stem, LONGEST - end.length()) + end;
    }
    return name;
  }

  /**
   * Whether a name holds a letter that this machine's files can't bear, so that they are named with
   * plain ones.
   *
   * @param name a name from the workbook
   * @return true without a UTF-8 locale, as under cron, for letters beyond ASCII
   */
  public static boolean writesPlainly(String name) {
    return !FileLetters.hold(withoutSigns(name));
  }

  private static String withoutSigns(String words) {
    StringBuilder kept = new StringBuilder();
    Normalizer.normalize(words, Normalizer.Form.NFC)
        .codePoints()
        .map(c -> Character.isWhitespace(c) ? ' ' : c)
        .filter(c -> !isDropped(c))
        .forEach(kept::appendCodePoint);
    return RESERVED_SIGNS.matcher(kept).replaceAll(" ");
  }

  private static String clean(String words) {
    String plain = FileLetters.written(withoutSigns(words));
    plain = EDGES.matcher(BLANKS.matcher(plain).replaceAll(" ")).replaceAll("");
    if (plain.isEmpty()) {
      return "unnamed";
    }
    int dot = plain.indexOf('.');
    String device = (dot < 0 ? plain : plain.substring(0, dot)).strip();
    return DEVICE.matcher(device).matches()
        ? device + "_" + plain.substring(device.length())
        : plain;
  }

  /**
   * Line breaks and tabulators count as blanks before this is asked; lone surrogates are dropped.
   */
  private static boolean isDropped(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.UNASSIGNED
        || type == Character.PRIVATE_USE;
  }

  private static String cut(String stem, int characters) {
    int end = Math.min(stem.length(), characters);
    while (end > 1 && stem.substring(0, end).getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      end--;
    }
    if (end < stem.length() && Character.isLowSurrogate(stem.charAt(end))) {
      end--;
    }
    return EDGES.matcher(stem.substring(0, end)).replaceAll("");
  }

  private static String folded(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKC)
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }
}
