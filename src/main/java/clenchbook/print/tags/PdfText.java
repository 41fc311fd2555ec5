package clenchbook.print.tags;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Writes texts in the syntax of PDF. */
final class PdfText {
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  private PdfText() {}

  /**
   * A text of any letters as a PDF text string (ISO 32000-1:2008, 7.9.2.2): UTF-16, big end first.
   *
   * @param text any text
   * @return the string with its brackets
   */
  static String string(String text) {
    return "<FEFF" + HEX.formatHex(text.getBytes(StandardCharsets.UTF_16BE)) + '>';
  }
}
