package clenchbook.commandlife;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a book in one of the formats in which farriers keep theirs; a cell is text or a day. */
enum BookOnDisk {
  XLSX("mybook.xlsx") {
    @Override
    void write(Path book, Map<String, List<List<Object>>> sheets) throws IOException {
      try (XSSFWorkbook workbook = new XSSFWorkbook();
          OutputStream out = Files.newOutputStream(book)) {
        CellStyle day = workbook.createCellStyle();
        day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
        sheets.forEach((name, rows) -> fill(workbook.createSheet(name), rows, day));
        workbook.write(out);
      }
    }

    private void fill(Sheet sheet, List<List<Object>> rows, CellStyle day) {
      for (List<Object> cells : rows) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (Object cell : cells) {
          var written = row.createCell(Math.max(0, row.getLastCellNum()));
          if (cell instanceof LocalDate date) {
            written.setCellValue(date);
            written.setCellStyle(day);
          } else {
            written.setCellValue(cell.toString());
          }
        }
      }
    }
  },

  CSV("mybook") {
    @Override
    void write(Path book, Map<String, List<List<Object>>> sheets) throws IOException {
      Files.createDirectories(book);
      for (Map.Entry<String, List<List<Object>>> sheet : sheets.entrySet()) {
        Files.writeString(
            book.resolve(sheet.getKey() + ".csv"),
            sheet.getValue().stream()
                .map(row -> row.stream().map(Object::toString).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n", "", "\n")));
      }
    }
  },

  /** The least that OpenDocument 1.3, part 3, section 3 asks of a spreadsheet; from memory. */
  ODS("mybook.ods") {
    private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";

    @Override
    void write(Path book, Map<String, List<List<Object>>> sheets) throws IOException {
      try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(book))) {
        entry(zip, "mimetype", TYPE);
        entry(zip, "content.xml", content(sheets));
        entry(
            zip,
            "META-INF/manifest.xml",
            "<m:manifest xmlns:m=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\">"
                + file("/", TYPE)
                + file("content.xml", "text/xml")
                + "</m:manifest>");
      }
    }

    private String file(String path, String type) {
      return "<m:file-entry m:full-path=\"" + path + "\" m:media-type=\"" + type + "\"/>";
    }

    private void entry(ZipOutputStream zip, String name, String text) throws IOException {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(text.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }

    private String content(Map<String, List<List<Object>>> sheets) {
      StringBuilder xml =
          new StringBuilder(
              "<o:document-content xmlns:o=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                  + " xmlns:t=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
                  + " xmlns:x=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
                  + " o:version=\"1.3\"><o:body><o:spreadsheet>");
      sheets.forEach(
          (name, rows) -> {
            xml.append("<t:table t:name=\"").append(name).append("\">");
            rows.forEach(row -> xml.append(row(row)));
            xml.append("</t:table>");
          });
      return xml.append("</o:spreadsheet></o:body></o:document-content>").toString();
    }

    private String row(List<Object> cells) {
      return cells.stream()
          .map(this::cell)
          .collect(Collectors.joining("", "<t:table-row>", "</t:table-row>"));
    }

    private String cell(Object cell) {
      String type =
          cell instanceof LocalDate
              ? "o:value-type=\"date\" o:date-value=\"" + cell + "\""
              : "o:value-type=\"string\"";
      return cell.toString().isEmpty()
          ? "<t:table-cell/>"
          : "<t:table-cell " + type + "><x:p>" + cell + "</x:p></t:table-cell>";
    }
  };

  private final String fileName;

  BookOnDisk(String fileName) {
    this.fileName = fileName;
  }

  String fileName() {
    return fileName;
  }

  abstract void write(Path book, Map<String, List<List<Object>>> sheets) throws IOException;
}
