package clenchbook.strangers;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a book as an OpenDocument spreadsheet, its XML by hand (OpenDocument 1.2, part 1, 9.1 and
 * 19.385, from memory).
 */
final class OdsWriter {
  private static final String NAMES = "urn:oasis:names:tc:opendocument:xmlns:";

  private OdsWriter() {}

  static void write(Kept kept, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
      put(zip, "content.xml", content(kept));
    }
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static String content(Kept kept) {
    StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    xml.append("<office:document-content office:version=\"1.2\"");
    for (String name : List.of("office", "table", "text")) {
      xml.append(" xmlns:").append(name).append("=\"").append(NAMES).append(name).append(":1.0\"");
    }
    xml.append("><office:body><office:spreadsheet>");
    for (Map.Entry<String, List<Object[]>> sheet : kept.sheets().entrySet()) {
      xml.append("<table:table table:name=\"").append(escaped(sheet.getKey())).append("\">");
      sheet.getValue().forEach(cells -> row(xml, cells));
      xml.append("</table:table>");
    }
    return xml.append("</office:spreadsheet></office:body></office:document-content>").toString();
  }

  private static void row(StringBuilder xml, Object[] cells) {
    xml.append("<table:table-row>");
    for (Object cell : cells) {
      xml.append(cell(cell));
    }
    xml.append("</table:table-row>");
  }

  private static String cell(Object value) {
    if (value == null || value.equals("")) {
      return "<table:table-cell/>";
    }
    String written =
        value instanceof LocalDate
            ? "date\" office:date-value=\"" + value
            : value instanceof Number ? "float\" office:value=\"" + value : "string";
    return "<table:table-cell office:value-type=\""
        + written
        + "\"><text:p>"
        + escaped(value.toString())
        + "</text:p></table:table-cell>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
