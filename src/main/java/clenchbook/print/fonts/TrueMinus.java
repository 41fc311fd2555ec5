package clenchbook.print.fonts;

/**
 * The minus sign on paper and in pictures. The text faces have none of their own, and a face of
 * another script would set it too wide among their figures; their en dash has the width and height
 * of one.
 */
public final class TrueMinus {
  private static final char MINUS = '\u2212';
  private static final char EN_DASH = '\u2013';

  private TrueMinus() {}

  /**
   * A text as the text faces can set it.
   *
   * @param text any text
   * @return the text with each minus sign as these faces have it
   */
  public static String inPrint(String text) {
    return text.replace(MINUS, EN_DASH);
  }
}
