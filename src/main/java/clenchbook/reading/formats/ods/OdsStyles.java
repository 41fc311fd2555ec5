package clenchbook.reading.formats.ods;

import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.WrittenNumber;
import clenchbook.reading.formats.parts.Xml;
import clenchbook.reading.formats.parts.XmlText;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The number formats of an OpenDocument book's cell styles, as far as a size hangs on them. */
final class OdsStyles {
  private static final int MOST = 70_000;

  private final Map<String, CellFormat> formats = new HashMap<>();
  private final Map<String, String> formatOfStyle = new HashMap<>();
  private final Set<String> hiding = new HashSet<>();
  private String lastStyle = "";

  /** Takes the element that the reader stands at, where it begins a style. */
  void take(Xml xml) throws IOException {
    if (!xml.starts() || formats.size() > MOST || formatOfStyle.size() > MOST) {
      return;
    }
    switch (xml.name()) {
      case "style" -> addStyle(xml);
      case "number-style", "currency-style", "percentage-style" -> addNumber(xml);
      case "date-style" -> addDate(xml);
      case "table-properties" -> {
        if (xml.attribute("display").orElse("").equals("false") && hiding.size() < MOST) {
          hiding.add(lastStyle);
        }
      }
      case "time-style" -> formats.put(xml.attribute("name").orElse(""), CellFormat.of("[h]:mm"));
      default -> {
        // Other styles say nothing about a value.
      }
    }
  }

  private void addStyle(Xml xml) throws IOException {
    String name = xml.attribute("name").orElse("");
    lastStyle = name;
    xml.attribute("data-style-name").ifPresent(format -> formatOfStyle.put(name, format));
  }

  private void addNumber(Xml xml) throws IOException {
    String name = xml.attribute("name").orElse("");
    String style = xml.name();
    StringBuilder code = new StringBuilder();
    while (xml.next() && !xml.ends(style)) {
      if (xml.starts("number")) {
        code.append(zeros(xml));
      } else if (xml.starts("fraction")) {
        code.append("# ?/?");
      } else if (xml.starts("text")) {
        code.append('"').append(text(xml)).append('"');
      } else if (xml.starts("currency-symbol")) {
        code.append("[$").append(text(xml)).append(']');
      }
    }
    formats.put(name, CellFormat.of(code.toString()));
  }

  private static String text(Xml xml) throws IOException {
    XmlText literal = new XmlText();
    literal.addElement(xml);
    return literal.text();
  }

  private static String zeros(Xml xml) throws IOException {
    int whole = WrittenNumber.parse(xml.attribute("min-integer-digits").orElse("1"), 1);
    int after = WrittenNumber.parse(xml.attribute("decimal-places").orElse("0"), 0);
    boolean plain = after == 0 && whole >= 1 && whole <= 9;
    return plain ? "0".repeat(whole) : "0.0";
  }

  private void addDate(Xml xml) throws IOException {
    String name = xml.attribute("name").orElse("");
    StringBuilder code = new StringBuilder();
    while (xml.next() && !xml.ends("date-style")) {
      if (xml.starts()) {
        code.append(
            switch (xml.name()) {
              case "day" -> "d-";
              case "month" -> "mmm-";
              case "year" -> "yy-";
              default -> "";
            });
      }
    }
    formats.put(name, CellFormat.of(code.toString().replaceFirst("-$", "")));
  }

  /** Whether sheets of a style are hidden. */
  boolean hides(String style) {
    return hiding.contains(style);
  }

  /** The format of a style; the general one where it has none. */
  CellFormat format(String style) {
    String format = formatOfStyle.getOrDefault(style, "");
    return formats.getOrDefault(format, CellFormat.GENERAL);
  }
}
