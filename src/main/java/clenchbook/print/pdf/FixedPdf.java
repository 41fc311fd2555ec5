package clenchbook.print.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Takes out of a PDF what the PDF library draws by lot: the document's identity. Works on bytes and
 * keeps every length, so that the offsets in the file stay true.
 */
final class FixedPdf {
  private static final byte[] IDENTITY = "/ID [<".getBytes(StandardCharsets.US_ASCII);
  private static final int IDENTITY_DIGITS = 32;

  private FixedPdf() {}

  /**
   * The same document with an identity made from its content.
   *
   * @param pdf a finished PDF; changed in place
   * @return the same array
   */
  static byte[] settle(byte[] pdf) {
    int at = lastIndexOf(pdf, IDENTITY);
    if (at >= 0) {
      identify(pdf, at + IDENTITY.length);
    }
    return pdf;
  }

  private static void identify(byte[] pdf, int first) {
    int second = first + IDENTITY_DIGITS + 2;
    byte[] nought = "0".repeat(IDENTITY_DIGITS).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(nought, 0, pdf, first, IDENTITY_DIGITS);
    System.arraycopy(nought, 0, pdf, second, IDENTITY_DIGITS);
    byte[] digits = HexFormat.of().formatHex(digest(pdf)).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(digits, 0, pdf, first, IDENTITY_DIGITS);
    System.arraycopy(digits, 0, pdf, second, IDENTITY_DIGITS);
  }

  /** The digest that the PDF standard names for identities (ISO 32000-1:2008, 14.4). */
  private static byte[] digest(byte[] bytes) {
    try {
      return MessageDigest.getInstance("MD5").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has MD5", e);
    }
  }

  private static boolean startsWith(byte[] pdf, int at, byte[] key) {
    if (at + key.length > pdf.length) {
      return false;
    }
    for (int i = 0; i < key.length; i++) {
      if (pdf[at + i] != key[i]) {
        return false;
      }
    }
    return true;
  }

  private static int lastIndexOf(byte[] pdf, byte[] key) {
    for (int i = pdf.length - key.length; i >= 0; i--) {
      if (startsWith(pdf, i, key)) {
        return i;
      }
    }
    return -1;
  }
}
