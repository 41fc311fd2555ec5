package clenchbook.speed;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes an office XML workbook row by row, as spreadsheet programs do: each text once in the
 * shared texts, dates as numbers with a date's style. The same rows give the same bytes.
 */
final class SheetFile implements AutoCloseable {
  private static final LocalDate DAY_NOUGHT = LocalDate.of(1899, 12, 30);
  private static final FileTime TIME = FileTime.fromMillis(1_767_225_600_000L);
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String LINKS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

  private final ZipOutputStream zip;
  private final Writer out;
  private final List<String> sheets = new ArrayList<>();
  private final Map<String, Integer> texts = new LinkedHashMap<>();
  private int row;

  SheetFile(Path file) throws IOException {
    zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)));
    out = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8), 1 << 16);
  }

  /** Begins a sheet; the one before it ends. */
  void sheet(String name, String... headings) throws IOException {
    endSheet();
    sheets.add(name);
    part("xl/worksheets/sheet" + sheets.size() + ".xml");
    out.write("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
    row = 0;
    row((Object[]) headings);
  }

  /** Writes a row; a blank text or null leaves its cell out. */
  void row(Object... values) throws IOException {
    row++;
    out.write("<row r=\"" + row + "\">");
    for (int column = 0; column < values.length; column++) {
      if (values[column] != null && !values[column].equals("")) {
        cell(reference(column), values[column]);
      }
    }
    out.write("</row>");
  }

  private void cell(String at, Object value) throws IOException {
    if (value instanceof LocalDate date) {
      out.write("<c r=\"" + at + "\" s=\"1\"><v>" + ChronoUnit.DAYS.between(DAY_NOUGHT, date));
    } else if (value instanceof Boolean truth) {
      out.write("<c r=\"" + at + "\" t=\"b\"><v>" + (truth ? 1 : 0));
    } else if (value instanceof BigDecimal money) {
      out.write("<c r=\"" + at + "\" s=\"2\"><v>" + money.toPlainString());
    } else if (value instanceof Number number) {
      out.write("<c r=\"" + at + "\"><v>" + number);
    } else {
      Integer index = texts.computeIfAbsent(value.toString(), text -> texts.size());
      out.write("<c r=\"" + at + "\" t=\"s\"><v>" + index);
    }
    out.write("</v></c>");
  }

  private String reference(int column) {
    String letters = column < 26 ? "" : String.valueOf((char) ('A' + column / 26 - 1));
    return letters + (char) ('A' + column % 26) + row;
  }

  private void endSheet() throws IOException {
    if (!sheets.isEmpty()) {
      out.write("</sheetData></worksheet>");
      endPart();
    }
  }

  private void part(String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setLastModifiedTime(TIME);
    zip.putNextEntry(entry);
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
  }

  private void endPart() throws IOException {
    out.flush();
    zip.closeEntry();
  }

  private void whole(String name, String text) throws IOException {
    part(name);
    out.write(text);
    endPart();
  }

  @Override
  public void close() throws IOException {
    endSheet();
    whole("xl/sharedStrings.xml", sharedTexts());
    whole("xl/styles.xml", styles());
    StringBuilder book = new StringBuilder();
    StringBuilder links = new StringBuilder();
    StringBuilder types = new StringBuilder();
    for (int i = 1; i <= sheets.size(); i++) {
      String name = escaped(sheets.get(i - 1));
      book.append("<sheet name=\"%s\" sheetId=\"%d\" r:id=\"rId%d\"/>".formatted(name, i, i));
      links.append(link(i, "worksheet", "worksheets/sheet" + i + ".xml"));
      types.append(type("/xl/worksheets/sheet" + i + ".xml", "worksheet"));
    }
    links.append(link(sheets.size() + 1, "styles", "styles.xml"));
    links.append(link(sheets.size() + 2, "sharedStrings", "sharedStrings.xml"));
    whole(
        "xl/workbook.xml",
        "<workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + LINKS
            + "\"><sheets>"
            + book
            + "</sheets></workbook>");
    whole("xl/_rels/workbook.xml.rels", relations(links.toString()));
    whole("_rels/.rels", relations(link(1, "officeDocument", "xl/workbook.xml")));
    whole(
        "[Content_Types].xml",
        "<Types xmlns=\""
            + PACKAGE
            + "content-types\"><Default Extension=\"rels\" ContentType=\""
            + "application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
            + type("/xl/workbook.xml", "sheet.main")
            + type("/xl/styles.xml", "styles")
            + type("/xl/sharedStrings.xml", "sharedStrings")
            + types
            + "</Types>");
    zip.close();
  }

  private static String relations(String links) {
    return "<Relationships xmlns=\"" + PACKAGE + "relationships\">" + links + "</Relationships>";
  }

  private static String link(int id, String type, String target) {
    return "<Relationship Id=\"rId%d\" Type=\"%s/%s\" Target=\"%s\"/>"
        .formatted(id, LINKS, type, target);
  }

  private static String type(String part, String kind) {
    return "<Override PartName=\"%s\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.%s+xml\"/>"
        .formatted(part, kind);
  }

  private String sharedTexts() {
    StringBuilder all = new StringBuilder("<sst xmlns=\"" + MAIN + "\">");
    texts.keySet().forEach(text -> all.append("<si><t>").append(escaped(text)).append("</t></si>"));
    return all.append("</sst>").toString();
  }

  /** Style 0 plain, 1 a day, 2 money. */
  private static String styles() {
    return "<styleSheet xmlns=\""
        + MAIN
        + "\">"
        + "<fonts count=\"1\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>"
        + "<fills count=\"1\"><fill><patternFill patternType=\"none\"/></fill></fills>"
        + "<borders count=\"1\"><border/></borders>"
        + "<cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"3\">"
        + "<xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"2\"/></cellXfs></styleSheet>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
