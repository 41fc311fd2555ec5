package clenchbook.reading.formats.cells;

/** Columns as a spreadsheet letters them: A is 0, Z is 25, AA is 26. */
public final class ColumnLetters {
  private ColumnLetters() {}

  /**
   * The column that a reference such as {@code AB12} begins with.
   *
   * @return the column, 0 for A; -1 where it begins with no letter
   */
  public static int column(String reference) {
    int column = 0;
    for (int i = 0; i < reference.length() && i < 4; i++) {
      int letter = (reference.charAt(i) | 0x20) - 'a';
      if (letter < 0 || letter > 25) {
        break;
      }
      column = column * 26 + letter + 1;
    }
    return column - 1;
  }
}
