package clenchbook.reading;

import clenchbook.problem.CellRef;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A small workbook for a test, its XML written by hand so that it owes nothing to the reader or to
 * a library: texts inline, numbers as they are, days and times as numbers with a format.
 */
public final class SmallBook {
  private final Map<String, List<Object[]>> sheets = new LinkedHashMap<>();
  private final List<String> formats = new ArrayList<>(List.of("yyyy\\-mm\\-dd", "h:mm"));
  private final Set<String> hidden = new HashSet<>();
  private String merged = "";
  private boolean from1904;
  private boolean broken;

  /** A number under a format of its own. */
  public record Styled(String number, String format) {}

  /** An error, or a formula of which no result is stored. */
  public record Raw(String attributes, String content) {}

  public static Raw error(String code) {
    return new Raw(" t=\"e\"", "<v>" + code + "</v>");
  }

  public static Raw noResult() {
    return new Raw("", "<f>A1*2</f>");
  }

  public static Raw formula(String result) {
    return new Raw("", "<f>A1*2</f><v>" + result + "</v>");
  }

  /** Adds rows to a sheet, which begins with its headings. */
  public SmallBook rows(String sheet, Object[]... rows) {
    sheets.computeIfAbsent(sheet, unused -> new ArrayList<>()).addAll(List.of(rows));
    return this;
  }

  public static Object[] row(Object... cells) {
    return cells;
  }

  /** The sheet Visits with these headings, parted by bars. */
  public static SmallBook visits(String headings) {
    return new SmallBook().rows("Visits", headings.split("\\|"));
  }

  public SmallBook sheet(String sheet, String headings) {
    return rows(sheet, headings.split("\\|"));
  }

  public SmallBook row(String sheet, Object... cells) {
    return rows(sheet, new Object[][] {cells});
  }

  public SmallBook visit(Object... cells) {
    return rows("Visits", new Object[][] {cells});
  }

  public SmallBook merge(String block) {
    merged += "<mergeCell ref=\"" + block + "\"/>";
    return this;
  }

  public SmallBook countingFrom1904() {
    from1904 = true;
    return this;
  }

  /** Hides a sheet. */
  public SmallBook hiding(String sheet) {
    hidden.add(sheet);
    return this;
  }

  /** Lets the last sheet break off in the middle of its last row. */
  public SmallBook breakingOff() {
    broken = true;
    return this;
  }

  /** Writes the book and reads it as a farrier in Britain. */
  public ReadResult read(Path folder) {
    return read(folder, Locale.UK);
  }

  public ReadResult read(Path folder, Locale machine) {
    try {
      return BookReader.read(write(folder), ReadOptions.of(machine));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  public Path write(Path folder) {
    try {
      Path file = folder.resolve("book.xlsx");
      Files.write(file, bytes());
      return file;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  public byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      StringBuilder book = new StringBuilder();
      StringBuilder relations = new StringBuilder();
      int number = 1;
      for (Map.Entry<String, List<Object[]>> sheet : sheets.entrySet()) {
        String xml = sheetXml(sheet.getValue());
        boolean last = broken && number == sheets.size();
        put(
            zip,
            "xl/worksheets/sheet" + number + ".xml",
            last ? xml.substring(0, xml.lastIndexOf("</c>")) : xml);
        book.append("<sheet name=\"").append(escaped(sheet.getKey())).append("\" sheetId=\"");
        book.append(number).append(hidden.contains(sheet.getKey()) ? "\" state=\"hidden" : "");
        book.append("\" r:id=\"rId").append(number).append("\"/>");
        relations.append(
            relation("rId" + number, "worksheet", "worksheets/sheet" + number + ".xml"));
        number++;
      }
      relations.append(relation("rIdS", "styles", "styles.xml"));
      put(zip, "xl/styles.xml", stylesXml());
      put(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\""
              + "http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><workbookPr"
              + (from1904 ? " date1904=\"1\"" : "")
              + "/><sheets>"
              + book
              + "</sheets></workbook>");
      put(zip, "xl/_rels/workbook.xml.rels", relations(relations.toString()));
      put(zip, "_rels/.rels", relations(relation("rId1", "officeDocument", "xl/workbook.xml")));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return bytes.toByteArray();
  }

  private static String relation(String id, String type, String target) {
    return "<Relationship Id=\""
        + id
        + "\" Type=\"http://schemas.openxmlformats.org/officeDocument/"
        + "2006/relationships/"
        + type
        + "\" Target=\""
        + target
        + "\"/>";
  }

  private static String relations(String all) {
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + all
        + "</Relationships>";
  }

  private static void put(ZipOutputStream zip, String name, String xml) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(
        ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + xml).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private String sheetXml(List<Object[]> rows) {
    StringBuilder xml = new StringBuilder();
    xml.append("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
    xml.append("<sheetData>");
    for (int row = 1; row <= rows.size(); row++) {
      xml.append("<row r=\"").append(row).append("\">");
      Object[] cells = rows.get(row - 1);
      for (int column = 0; column < cells.length; column++) {
        xml.append(cellXml(CellRef.letters(column) + row, cells[column]));
      }
      xml.append("</row>");
    }
    xml.append("</sheetData>");
    String blocks = merged.isEmpty() ? "" : "<mergeCells>" + merged + "</mergeCells>";
    return xml.append(blocks).append("</worksheet>").toString();
  }

  private String cellXml(String at, Object cell) {
    String start = "<c r=\"" + at + "\"";
    if (cell == null || "".equals(cell)) {
      return "";
    }
    if (cell instanceof LocalDate day) {
      long serial = ChronoUnit.DAYS.between(LocalDate.of(1899, 12, 30), day);
      return start + " s=\"1\"><v>" + (from1904 ? serial - 1462 : serial) + "</v></c>";
    }
    if (cell instanceof LocalTime time) {
      return start + " s=\"2\"><v>" + time.toSecondOfDay() / 86400.0 + "</v></c>";
    }
    if (cell instanceof Styled styled) {
      if (!formats.contains(styled.format())) {
        formats.add(styled.format());
      }
      int style = formats.indexOf(styled.format()) + 1;
      return start + " s=\"" + style + "\"><v>" + styled.number() + "</v></c>";
    }
    if (cell instanceof Raw raw) {
      return start + raw.attributes() + ">" + raw.content() + "</c>";
    }
    if (cell instanceof Boolean truth) {
      return start + " t=\"b\"><v>" + (truth ? 1 : 0) + "</v></c>";
    }
    return cell instanceof Number
        ? start + "><v>" + cell + "</v></c>"
        : start
            + " t=\"inlineStr\"><is><t xml:space=\"preserve\">"
            + escaped(cell.toString())
            + "</t></is></c>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace("\"", "&quot;")
        .replace("\n", "&#10;");
  }

  private String stylesXml() {
    StringBuilder xml = new StringBuilder();
    xml.append("<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
    xml.append("<numFmts count=\"").append(formats.size()).append("\">");
    for (int i = 0; i < formats.size(); i++) {
      xml.append("<numFmt numFmtId=\"").append(164 + i).append("\" formatCode=\"");
      xml.append(escaped(formats.get(i))).append("\"/>");
    }
    xml.append("</numFmts><cellXfs count=\"")
        .append(formats.size() + 1)
        .append("\"><xf numFmtId=\"0\"/>");
    for (int i = 0; i < formats.size(); i++) {
      xml.append("<xf numFmtId=\"").append(164 + i).append("\"/>");
    }
    return xml.append("</cellXfs></styleSheet>").toString();
  }
}
