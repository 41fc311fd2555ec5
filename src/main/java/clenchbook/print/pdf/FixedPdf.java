package clenchbook.print.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Takes out of a PDF what the PDF library draws by lot: the prefixes of embedded fonts and the
 * document's identity. Works on bytes and keeps every length, so that the offsets in the file stay
 * true.
 */
final class FixedPdf {
  private static final byte[] IDENTITY = "/ID [<".getBytes(StandardCharsets.US_ASCII);
  private static final List<String> FONT_KEYS = List.of("/BaseFont/", "/FontName/");
  private static final int PREFIX = 6;
  private static final int IDENTITY_DIGITS = 32;

  private FixedPdf() {}

  /**
   * The same document with fixed prefixes and an identity made from its content.
   *
   * @param pdf a finished PDF; changed in place
   * @return the same array
   */
  static byte[] settle(byte[] pdf) {
    renameFonts(pdf);
    int at = lastIndexOf(pdf, IDENTITY);
    if (at >= 0) {
      identify(pdf, at + IDENTITY.length);
    }
    return pdf;
  }

  private static void renameFonts(byte[] pdf) {
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    SortedSet<Integer> places = new TreeSet<>();
    for (String key : FONT_KEYS) {
      for (int at = text.indexOf(key); at >= 0; at = text.indexOf(key, at + 1)) {
        places.add(at + key.length());
      }
    }
    Map<String, String> names = new LinkedHashMap<>();
    for (int at : places) {
      if (hasPrefix(pdf, at)) {
        rename(pdf, at, names);
      }
    }
  }

  private static boolean hasPrefix(byte[] pdf, int at) {
    if (at + PREFIX >= pdf.length || pdf[at + PREFIX] != '+') {
      return false;
    }
    for (int i = at; i < at + PREFIX; i++) {
      if (pdf[i] < 'A' || pdf[i] > 'Z') {
        return false;
      }
    }
    return true;
  }

  private static void rename(byte[] pdf, int at, Map<String, String> names) {
    String drawn = new String(pdf, at, PREFIX, StandardCharsets.US_ASCII);
    String fixed = names.computeIfAbsent(drawn, unused -> prefix(names.size()));
    System.arraycopy(fixed.getBytes(StandardCharsets.US_ASCII), 0, pdf, at, PREFIX);
  }

  /** CLENCA, CLENCB and so on. */
  private static String prefix(int index) {
    return "CLEN" + (char) ('A' + index / 26 % 26) + (char) ('A' + index % 26);
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
