package clenchbook.reading.formats.xlsx;

import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.WrittenNumber;
import clenchbook.reading.formats.parts.Parts;
import clenchbook.reading.formats.parts.Xml;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;

/** The number formats of a book's cell styles. */
final class XlsxStyles {
  private static final int MOST_STYLES = 70_000;

  private final List<CellFormat> formats = new ArrayList<>();
  private final Map<Integer, CellFormat> byNumber = new HashMap<>();

  /** No styles at all: every number is plain. */
  static XlsxStyles none() {
    return new XlsxStyles();
  }

  static XlsxStyles read(Parts parts, XMLInputFactory factory, String part) throws IOException {
    XlsxStyles styles = new XlsxStyles();
    try (Xml xml = Xml.open(factory, parts.open(part))) {
      boolean inCellStyles = false;
      while (xml.next()) {
        if (xml.starts("numFmt")) {
          styles.addFormat(xml);
        } else if (xml.starts("cellXfs") || xml.ends("cellXfs")) {
          inCellStyles = xml.starts();
        } else if (inCellStyles && xml.starts("xf")) {
          styles.addStyle(xml);
        }
      }
    }
    return styles;
  }

  /** Formats of conditional styles bear numbers too; the first one of a number is the book's. */
  private void addFormat(Xml xml) throws IOException {
    int number = WrittenNumber.parse(xml.attribute("numFmtId").orElse(""), -1);
    String code = xml.attribute("formatCode").orElse("");
    if (number >= 0 && byNumber.size() < MOST_STYLES) {
      byNumber.putIfAbsent(number, CellFormat.numbered(number, code));
    }
  }

  private void addStyle(Xml xml) throws IOException {
    int number = WrittenNumber.parse(xml.attribute("numFmtId").orElse("0"), 0);
    if (formats.size() < MOST_STYLES) {
      CellFormat own = byNumber.get(number);
      formats.add(own == null ? byNumber.computeIfAbsent(number, CellFormat::builtIn) : own);
    }
  }

  /** The format of a style; the general one where there is no such style. */
  CellFormat format(int style) {
    return style >= 0 && style < formats.size() ? formats.get(style) : CellFormat.GENERAL;
  }
}
