package clenchbook.reading.formats.cells;

/** Whole numbers of a file's own machinery, where anything may stand in their place. */
public final class WrittenNumber {
  private WrittenNumber() {}

  /** The number, or the fallback for anything but one to nine digits. */
  public static int parse(String text, int fallback) {
    return parse(text, 0, fallback);
  }

  /** The number that the digits from an index to the end make, or the fallback. */
  public static int parse(String text, int from, int fallback) {
    int length = text.length() - from;
    if (length < 1 || length > 9) {
      return fallback;
    }
    int number = 0;
    for (int i = from; i < text.length(); i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return fallback;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
