package clenchbook.writing;

/**
 * How high a row has to be for a text that breaks into lines: not every program works it out anew
 * when it opens a file, and lines that don't fit are printed over those below.
 */
final class CellLines {
  /** One line, in points. */
  static final int HEIGHT = 15;

  private CellLines() {}

  /**
   * The height for a text in a column.
   *
   * @param width of the column in characters
   * @return points, one line at least
   */
  static int height(String text, int width) {
    return HEIGHT * lines(text, width);
  }

  /** Lines break between words, or within one that is too long. */
  static int lines(String text, int width) {
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      int used = 0;
      lines++;
      for (String word : paragraph.split(" ")) {
        int wanted = used == 0 ? word.length() : used + 1 + word.length();
        boolean breaks = used > 0 && wanted > width;
        int length = breaks ? word.length() : wanted;
        lines += (breaks ? 1 : 0) + (Math.max(1, length) - 1) / width;
        used = length > width ? length % width : length;
      }
    }
    return lines;
  }
}
