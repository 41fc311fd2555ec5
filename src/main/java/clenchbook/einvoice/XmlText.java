package clenchbook.einvoice;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes one XML document as text: an element a line, indented, in the order it is called. What XML
 * cannot hold (control characters, halves of pairs) is left out; blank texts write no element.
 */
final class XmlText {
  private final StringBuilder text =
      new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; its attributes are given as they stand in XML, each after a blank. */
  XmlText open(String name, String attributes) {
    indent().append('<').append(name).append(attributes).append(">\n");
    open.push(name);
    return this;
  }

  XmlText open(String name) {
    return open(name, "");
  }

  /** Closes the innermost element. */
  XmlText close() {
    String name = open.pop();
    indent().append("</").append(name).append(">\n");
    return this;
  }

  XmlText text(String name, String content) {
    return text(name, "", content);
  }

  /** An element that holds text; none where the text is blank. */
  XmlText text(String name, String attributes, String content) {
    String clean = clean(content);
    if (!clean.isBlank()) {
      indent().append('<').append(name).append(attributes).append('>');
      text.append(clean).append("</").append(name).append(">\n");
    }
    return this;
  }

  /** An attribute with its blank before it. */
  static String attribute(String name, String value) {
    return " " + name + "=\"" + clean(value).replace("\"", "&quot;") + "\"";
  }

  private StringBuilder indent() {
    return text.append("  ".repeat(open.size()));
  }

  private static String clean(String content) {
    StringBuilder clean = new StringBuilder(content.length());
    content
        .strip()
        .codePoints()
        .filter(XmlText::allowed)
        .forEach(
            point -> {
              switch (point) {
                case '&' -> clean.append("&amp;");
                case '<' -> clean.append("&lt;");
                case '>' -> clean.append("&gt;");
                default -> clean.appendCodePoint(point);
              }
            });
    return clean.toString();
  }

  /** What XML 1.0 (fifth edition, 2008, section 2.2) allows, tab and line ends apart. */
  private static boolean allowed(int point) {
    return point == '\n'
        || (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }

  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not closed: " + open);
    }
    return text.toString();
  }
}
