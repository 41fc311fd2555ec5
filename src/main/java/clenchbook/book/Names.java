package clenchbook.book;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.Locale;

/**
 * When two names are the same name: case, surrounding and repeated spaces and the composition of
 * accents do not matter; accents do.
 */
public final class Names {
  /** Orders names as a list for people would, whatever the machine's locale. */
  public static final Comparator<String> ORDER = Names::compare;

  private Names() {}

  /**
   * The form under which a name is looked up.
   *
   * @param name any name; empty stays empty
   * @return equal for equal names
   */
  public static String key(String name) {
    String trimmed = name.strip();
    if (plain(trimmed)) {
      return trimmed.toLowerCase(Locale.ROOT);
    }
    String composed = Normalizer.normalize(trimmed, Normalizer.Form.NFC);
    return composed.toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0]+", " ").strip();
  }

  private static boolean plain(String name) {
    for (int index = 0; index < name.length(); index++) {
      char letter = name.charAt(index);
      boolean doubled = letter == ' ' && name.charAt(index + 1) == ' ';
      if (letter >= 0x7f || letter < ' ' || doubled) {
        return false;
      }
    }
    return true;
  }

  /** By key, then as written; plain names are compared where they lie. */
  private static int compare(String one, String other) {
    if (one.equals(other)) {
      return 0;
    }
    int byKey =
        trimmed(one) && trimmed(other) && plain(one) && plain(other)
            ? String.CASE_INSENSITIVE_ORDER.compare(one, other)
            : key(one).compareTo(key(other));
    return byKey == 0 ? one.compareTo(other) : byKey;
  }

  private static boolean trimmed(String name) {
    return name.isEmpty() || (name.charAt(0) > ' ' && name.charAt(name.length() - 1) > ' ');
  }

  /**
   * Whether two names are one.
   *
   * @param one a name
   * @param other another
   * @return true when their keys are equal
   */
  public static boolean same(String one, String other) {
    return key(one).equals(key(other));
  }
}
