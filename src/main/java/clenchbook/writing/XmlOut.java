package clenchbook.writing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;

/** Writes XML text. */
final class XmlOut {
  private final Writer writer;

  XmlOut(Writer writer) {
    this.writer = writer;
  }

  /** Writes markup as it is. */
  XmlOut raw(String markup) {
    try {
      writer.write(markup);
      return this;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Writes a text or attribute value; what XML can't hold is left out. */
  XmlOut text(String text) {
    return raw(escaped(text));
  }

  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 8);
    text.codePoints().forEach(c -> add(safe, c));
    return safe.toString();
  }

  private static void add(StringBuilder safe, int c) {
    switch (c) {
      case '&' -> safe.append("&amp;");
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '"' -> safe.append("&quot;");
      case '\n' -> safe.append("&#10;");
      default -> {
        boolean control = c < 0x20 && c != '\t';
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        if (!control && !surrogate && c != 0xFFFE && c != 0xFFFF) {
          safe.appendCodePoint(c);
        }
      }
    }
  }
}
