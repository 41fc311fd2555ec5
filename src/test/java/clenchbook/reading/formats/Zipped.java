package clenchbook.reading.formats;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packages written part by part, as any program might have written them. */
public final class Zipped {
  static final String REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
  public static final String STRICT = "http://purl.oclc.org/ooxml/officeDocument/relationships/";

  private final Map<String, String> parts = new LinkedHashMap<>();

  public static Zipped empty() {
    return new Zipped();
  }

  /** A book of one sheet with this inside its sheetData, and the usual parts around it. */
  public static Zipped sheet(String rows) {
    return empty()
        .part("_rels/.rels", relations(REL, "officeDocument", "xl/workbook.xml"))
        .part(
            "xl/workbook.xml",
            "<workbook xmlns:r=\"http://r\"><sheets><sheet name=\"Visits\""
                + " r:id=\"rId0\"/></sheets></workbook>")
        .part(
            "xl/_rels/workbook.xml.rels",
            relations(
                REL,
                "worksheet",
                "worksheets/sheet1.xml",
                "sharedStrings",
                "sharedStrings.xml",
                "styles",
                "styles.xml"))
        .part(
            "xl/worksheets/sheet1.xml",
            "<worksheet><sheetData>" + rows + "</sheetData></worksheet>");
  }

  public static String relations(String base, String... typesAndTargets) {
    StringBuilder xml = new StringBuilder("<Relationships>");
    for (int i = 0; i < typesAndTargets.length; i += 2) {
      xml.append("<Relationship Id=\"rId").append(i / 2).append("\" Type=\"").append(base);
      xml.append(typesAndTargets[i])
          .append("\" Target=\"")
          .append(typesAndTargets[i + 1])
          .append("\"/>");
    }
    return xml.append("</Relationships>").toString();
  }

  public Zipped part(String name, String xml) {
    parts.put(name, xml);
    return this;
  }

  public Path write(Path folder) throws IOException {
    Path file = folder.resolve("book.xlsx");
    try (OutputStream stream = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(stream)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }

  /** The rows of the first sheet, each as its number and its cells. */
  public static List<String> rows(Path file) throws IOException {
    return rows(file, 0, Optional.empty());
  }

  public static List<String> rows(Path file, int sheet, Optional<String> password)
      throws IOException {
    List<String> rows = new ArrayList<>();
    try (TableSource source = TableFile.open(file, password)) {
      source.rows(sheet, row -> rows.add(told(row)));
    }
    return rows;
  }

  private static String told(Row row) {
    StringBuilder told = new StringBuilder().append(row.number()).append(':');
    for (Cell cell : row.cells()) {
      told.append(' ').append(cell.getClass().getSimpleName().charAt(0)).append(cell.column());
      told.append('=').append(cell.shown());
    }
    return told.toString();
  }
}
