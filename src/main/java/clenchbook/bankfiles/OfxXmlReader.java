package clenchbook.bankfiles;

/** Reads OFX 2, which is XML. */
final class OfxXmlReader {
  private OfxXmlReader() {}

  /** Reads from the start of {@code OFX} to its end. */
  static void read(XmlPass xml, OfxStatements statements) {
    statements.begin("OFX");
    int outer = xml.depth() - 1;
    StringBuilder value = new StringBuilder();
    while (xml.depth() > outer && xml.next()) {
      if (xml.starts()) {
        value.setLength(0);
        if (OfxStatements.isAggregate(xml.name())) {
          statements.begin(xml.name());
        }
      } else if (xml.ends() && OfxStatements.isAggregate(xml.name())) {
        statements.end(xml.name());
      } else if (xml.ends()) {
        statements.value(xml.name(), value.toString());
        value.setLength(0);
      } else if (value.length() < Texts.MOST) {
        String piece = xml.piece();
        value.append(piece, 0, Math.min(piece.length(), Texts.MOST));
      }
    }
    statements.done();
  }
}
