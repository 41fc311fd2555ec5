package clenchbook.reading.formats.ods;

import clenchbook.reading.formats.cells.WrittenNumber;
import clenchbook.reading.formats.parts.Xml;
import clenchbook.reading.formats.parts.XmlText;
import java.io.IOException;

/** One cell of an OpenDocument sheet as it stands in the file; read again for each cell. */
final class OdsCell {
  private static final int MOST_SPACES = 1_000;

  private final XmlText text = new XmlText();
  private String type = "";
  private String value = "";
  private String style = "";
  private boolean formula;
  private int repeated;
  private int rowsSpanned;

  /** Reads the cell that the reader stands at the start of, up to its end. */
  void read(Xml xml) throws IOException {
    type = "";
    value = "";
    style = "";
    formula = false;
    repeated = 1;
    rowsSpanned = 1;
    for (int i = 0; i < xml.attributes(); i++) {
      takeAttribute(xml.attributeName(i), xml.attribute(i));
    }
    text.clear();
    readContent(xml);
  }

  private void takeAttribute(String name, String held) {
    switch (name) {
      case "value-type" -> type = type.equals("error") ? type : held;
      case "value", "date-value", "time-value", "boolean-value", "string-value" -> value = held;
      case "style-name" -> style = held;
      case "formula" -> formula = true;
      case "number-columns-repeated" -> repeated = Math.max(1, WrittenNumber.parse(held, 1));
      case "number-rows-spanned" -> rowsSpanned = Math.max(1, WrittenNumber.parse(held, 1));
      default -> {
        // Nothing else says anything about the value.
      }
    }
  }

  /** Paragraphs are lines; notes and drawings in a cell are no part of its text. */
  private void readContent(Xml xml) throws IOException {
    boolean first = true;
    for (int depth = 1; depth > 0 && xml.next(); ) {
      if (xml.ends()) {
        depth--;
      } else if (xml.starts("p")) {
        if (!first) {
          text.add("\n");
        }
        first = false;
        readParagraph(xml);
      } else if (xml.starts()) {
        xml.skip();
      }
    }
  }

  private void readParagraph(Xml xml) throws IOException {
    for (int depth = 1; depth > 0 && xml.next(); ) {
      if (xml.ends()) {
        depth--;
      } else if (!xml.starts()) {
        text.add(xml.piece());
      } else {
        depth++;
        addMark(xml);
      }
    }
  }

  private void addMark(Xml xml) throws IOException {
    switch (xml.name()) {
      case "s" -> {
        int spaces = WrittenNumber.parse(xml.attribute("c").orElse("1"), 1);
        text.add(" ".repeat(Math.min(MOST_SPACES, Math.max(1, spaces))));
      }
      case "tab" -> text.add("\t");
      case "line-break" -> text.add("\n");
      default -> {
        // A run of its own look: its text follows.
      }
    }
  }

  String type() {
    return type;
  }

  String value() {
    return value;
  }

  String style() {
    return style;
  }

  boolean isFormula() {
    return formula;
  }

  int repeated() {
    return repeated;
  }

  int rowsSpanned() {
    return rowsSpanned;
  }

  String text() {
    return text.text().isEmpty() && type.equals("string") ? value : text.text();
  }

  boolean isCut() {
    return text.isCut();
  }
}
