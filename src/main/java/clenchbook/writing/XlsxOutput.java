package clenchbook.writing;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook written sheet by sheet as a stream. It holds no clock time, so that the same content
 * is the same bytes; texts are kept as texts, so that none can work as a formula.
 */
final class XlsxOutput implements AutoCloseable {
  static final String DECLARATION =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE =
      "http://schemas.openxmlformats.org/package/2006/relationships";
  private static final String TYPES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  /** The first moment that a zip archive can bear. */
  /**
   * For the very first moment that a zip knows Java would add one that depends on the time zone.
   */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 2, 0, 0);

  private static final int LONGEST_NAME = 31;

  private final ZipOutputStream zip;
  private final LookTable looks = new LookTable();
  private final List<String> names = new ArrayList<>();
  private final List<Boolean> noted = new ArrayList<>();

  /** Begins a workbook; the stream is closed by whoever opened it. */
  XlsxOutput(OutputStream stream) {
    this.zip = new ZipOutputStream(stream);
  }

  /** Takes what a sheet holds. */
  interface Content {
    void write(SheetOutput sheet) throws IOException;
  }

  int look(CellLook look) {
    return looks.number(look);
  }

  /** A name that a sheet may have and none has yet. */
  String freeName(String wanted) {
    String legal = wanted.replaceAll("[\\[\\]:*?/\\\\\\p{Cntrl}]", " ").strip();
    String bare = legal.replaceAll("^'+|'+$", "");
    String base = bare.isEmpty() ? "Sheet" : bare;
    String name = cut(base, LONGEST_NAME);
    for (int next = 2; isTaken(name); next++) {
      String ending = " " + next;
      name = cut(base, LONGEST_NAME - ending.length()) + ending;
    }
    return name;
  }

  private static String cut(String name, int length) {
    return name.length() <= length ? name : name.substring(0, length);
  }

  private boolean isTaken(String name) {
    return names.stream()
        .anyMatch(n -> n.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)));
  }

  /**
   * Writes the next sheet.
   *
   * @param name a {@link #freeName}
   */
  void addSheet(String name, SheetHeadOutput head, Content content) throws IOException {
    names.add(name);
    int number = names.size();
    SheetOutput sheet = new SheetOutput(this);
    part("xl/worksheets/sheet" + number + ".xml", out -> sheet.write(out, head, content));
    noted.add(!sheet.notes().isEmpty());
    if (!sheet.notes().isEmpty()) {
      part("xl/worksheets/_rels/sheet" + number + ".xml.rels", out -> noteRelations(out, number));
      part("xl/comments" + number + ".xml", out -> NoteParts.writeTexts(out, sheet.notes()));
      part(
          "xl/drawings/vmlDrawing" + number + ".vml",
          out -> NoteParts.writeBoxes(out, sheet.notes()));
    }
  }

  private static void noteRelations(XmlOut out, int number) {
    out.raw(DECLARATION).raw("<Relationships xmlns=\"" + PACKAGE + "\">");
    relation(out, "rId1", "vmlDrawing", "../drawings/vmlDrawing" + number + ".vml");
    relation(out, "rId2", "comments", "../comments" + number + ".xml");
    out.raw("</Relationships>");
  }

  private static void relation(XmlOut out, String id, String type, String target) {
    out.raw("<Relationship Id=\"" + id + "\" Type=\"" + RELATIONS + "/" + type + "\" Target=\"")
        .raw(target + "\"/>");
  }

  /** Writes one part of the package. */
  private interface Part {
    void write(XmlOut out) throws IOException;
  }

  private void part(String name, Part part) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
    Writer writer =
        new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8), 1 << 15);
    try {
      part.write(new XmlOut(writer));
    } catch (UncheckedIOException failed) {
      throw failed.getCause();
    }
    writer.flush();
    zip.closeEntry();
  }

  /** Writes what all sheets share, and ends the workbook. */
  @Override
  public void close() throws IOException {
    part("xl/styles.xml", looks::write);
    part("xl/workbook.xml", this::writeBook);
    part("xl/_rels/workbook.xml.rels", this::writeBookRelations);
    part("_rels/.rels", XlsxOutput::writeRootRelations);
    part("[Content_Types].xml", this::writeTypes);
    zip.finish();
    zip.flush();
  }

  private void writeBook(XmlOut out) {
    out.raw(DECLARATION)
        .raw("<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><sheets>");
    for (int i = 1; i <= names.size(); i++) {
      out.raw("<sheet name=\"").text(names.get(i - 1));
      out.raw("\" sheetId=\"" + i + "\" r:id=\"rId" + i + "\"/>");
    }
    out.raw("</sheets></workbook>");
  }

  private void writeBookRelations(XmlOut out) {
    out.raw(DECLARATION).raw("<Relationships xmlns=\"" + PACKAGE + "\">");
    for (int i = 1; i <= names.size(); i++) {
      relation(out, "rId" + i, "worksheet", "worksheets/sheet" + i + ".xml");
    }
    relation(out, "rId" + (names.size() + 1), "styles", "styles.xml");
    out.raw("</Relationships>");
  }

  private static void writeRootRelations(XmlOut out) {
    out.raw(DECLARATION).raw("<Relationships xmlns=\"" + PACKAGE + "\">");
    relation(out, "rId1", "officeDocument", "xl/workbook.xml");
    out.raw("</Relationships>");
  }

  private void writeTypes(XmlOut out) {
    out.raw(DECLARATION)
        .raw("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">")
        .raw("<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package")
        .raw(".relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>")
        .raw(
            "<Default Extension=\"vml\""
                + " ContentType=\"application/vnd.openxmlformats-officedocument")
        .raw(".vmlDrawing\"/>");
    type(out, "/xl/workbook.xml", "sheet.main+xml");
    type(out, "/xl/styles.xml", "styles+xml");
    for (int i = 1; i <= names.size(); i++) {
      type(out, "/xl/worksheets/sheet" + i + ".xml", "worksheet+xml");
      if (noted.get(i - 1)) {
        type(out, "/xl/comments" + i + ".xml", "comments+xml");
      }
    }
    out.raw("</Types>");
  }

  private static void type(XmlOut out, String part, String type) {
    out.raw("<Override PartName=\"" + part + "\" ContentType=\"" + TYPES + type + "\"/>");
  }
}
