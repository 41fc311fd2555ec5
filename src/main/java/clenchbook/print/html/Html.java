package clenchbook.print.html;

import java.nio.charset.StandardCharsets;

/** Writes text, attributes and links so that they stay what they are within a page. */
final class Html {
  private Html() {}

  /** A text or attribute value; what HTML does not allow becomes a mark that is seen. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
              }
            });
    return safe.toString();
  }

  private static boolean isAllowed(int c) {
    boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
    boolean surrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    boolean noncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    return !control && !surrogate && !noncharacter;
  }

  /** A relative path as the address of a link: RFC 3986, all but unreserved characters encoded. */
  static String address(String path) {
    StringBuilder address = new StringBuilder("./");
    for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain = c < 0x80 && (Character.isLetterOrDigit(c) || "-._~/".indexOf(c) >= 0);
      if (plain) {
        address.append(c);
      } else {
        address.append(String.format("%%%02X", (int) c));
      }
    }
    return address.toString();
  }
}
