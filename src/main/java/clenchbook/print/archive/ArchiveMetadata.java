package clenchbook.print.archive;

import java.time.LocalDate;

/**
 * What a document says of itself in XMP (ISO 16684-1): title, author, language, day, and the
 * standards it keeps to. Its day stands for the clock's.
 */
final class ArchiveMetadata {
  private static final String HEAD =
      "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
          + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
          + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n";

  private static final String FOOT = "</rdf:RDF></x:xmpmeta>\n<?xpacket end=\"r\"?>";

  /** PDF/A knows the schema of PDF/UA only by description (ISO 19005-2:2011, 6.6.2.3). */
  private static final String UA_SCHEMA =
      "<rdf:li rdf:parseType=\"Resource\">"
          + "<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>"
          + "<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>"
          + "<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>"
          + "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">"
          + "<pdfaProperty:name>part</pdfaProperty:name>"
          + "<pdfaProperty:valueType>Integer</pdfaProperty:valueType>"
          + "<pdfaProperty:category>internal</pdfaProperty:category>"
          + "<pdfaProperty:description>part of ISO 14289</pdfaProperty:description>"
          + "</rdf:li></rdf:Seq></pdfaSchema:property></rdf:li>";

  private final ArchiveForm form;
  private final String title;
  private final String author;
  private final String language;
  private final LocalDate day;

  ArchiveMetadata(ArchiveForm form, String title, String author, String language, LocalDate day) {
    this.form = form;
    this.title = title;
    this.author = author;
    this.language = language;
    this.day = day;
  }

  String packet() {
    StringBuilder text = new StringBuilder(2_500).append(HEAD);
    text.append("<rdf:Description rdf:about=\"\"")
        .append(" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"")
        .append(" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\"")
        .append(" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\"")
        .append(" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n");
    text.append("<dc:format>application/pdf</dc:format><dc:title><rdf:Alt>")
        .append("<rdf:li xml:lang=\"x-default\">")
        .append(escaped(title))
        .append("</rdf:li></rdf:Alt></dc:title>");
    if (!author.isBlank()) {
      text.append("<dc:creator><rdf:Seq><rdf:li>")
          .append(escaped(author))
          .append("</rdf:li></rdf:Seq></dc:creator>");
    }
    text.append("<dc:language><rdf:Bag><rdf:li>")
        .append(escaped(language))
        .append("</rdf:li></rdf:Bag></dc:language>\n");
    String noon = day + "T12:00:00Z";
    text.append("<xmp:CreatorTool>Clenchbook</xmp:CreatorTool><xmp:CreateDate>")
        .append(noon)
        .append("</xmp:CreateDate><xmp:ModifyDate>")
        .append(noon)
        .append("</xmp:ModifyDate>\n");
    text.append("<pdfaid:part>").append(form.part()).append("</pdfaid:part>");
    text.append("<pdfaid:conformance>B</pdfaid:conformance><pdfuaid:part>1</pdfuaid:part>");
    text.append("</rdf:Description>\n");
    schemas(text);
    return text.append(form.metadata()).append(FOOT).toString();
  }

  private void schemas(StringBuilder text) {
    text.append("<rdf:Description rdf:about=\"\"")
        .append(" xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\"")
        .append(" xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\"")
        .append(" xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">")
        .append("<pdfaExtension:schemas><rdf:Bag>")
        .append(UA_SCHEMA)
        .append(form.schemas())
        .append("</rdf:Bag></pdfaExtension:schemas></rdf:Description>\n");
  }

  /** Characters that XML can't hold are left out. */
  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                default -> {
                  if (c >= ' ' && c != 0xFFFE && c != 0xFFFF && (c < 0xD800 || c > 0xDFFF)) {
                    safe.appendCodePoint(c);
                  }
                }
              }
            });
    return safe.toString();
  }
}
