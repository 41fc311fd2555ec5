package clenchbook.reading.formats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.SmallBook;
import clenchbook.reading.formats.cells.TableSource;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that nobody sees are read, and known as hidden, whatever the format. */
class HiddenSheetsTest {
  private static final String NAMES = "urn:oasis:names:tc:opendocument:xmlns:";

  @TempDir Path folder;

  private static String hidden(Path file) throws IOException {
    StringBuilder told = new StringBuilder();
    try (TableSource source = TableFile.open(file, Optional.empty())) {
      for (int sheet = 0; sheet < source.sheetNames().size(); sheet++) {
        String state = source.isHidden(sheet) ? "hidden" : "seen";
        told.append(source.sheetNames().get(sheet)).append(' ').append(state).append('\n');
      }
    }
    return told.toString();
  }

  private Path written(Workbook book, String name) throws IOException {
    for (String sheet : new String[] {"One", "Two", "Three"}) {
      book.createSheet(sheet).createRow(0).createCell(0).setCellValue(sheet);
    }
    book.setSheetVisibility(1, SheetVisibility.HIDDEN);
    book.setSheetVisibility(2, SheetVisibility.VERY_HIDDEN);
    Path file = folder.resolve(name);
    try (book;
        OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    return file;
  }

  @Test
  void a_book_of_either_of_the_two_workbook_formats_tells_its_hidden_sheets() throws IOException {
    String told = "One seen\nTwo hidden\nThree hidden\n";
    assertEquals(told, hidden(written(new HSSFWorkbook(), "book.xls")));
    assertEquals(told, hidden(written(new XSSFWorkbook(), "book.xlsx")));
    SmallBook small = new SmallBook().sheet("One", "a").sheet("Two", "b").hiding("Two");
    assertEquals("One seen\nTwo hidden\n", hidden(small.write(folder)));
  }

  /** OpenDocument 1.2, part 1, 20.404 (table:display of a table's style), from memory. */
  @Test
  void an_open_document_tells_its_hidden_sheets_by_their_style() throws IOException {
    String xml =
        document(
            style("seen", "<style:table-properties table:display=\"true\"/>")
                + style("away", "<style:table-properties table:display=\"false\"/>")
                + style("plain", ""),
            table("One", "seen") + table("Two", "away") + table("Three", "plain"));
    Path file = folder.resolve("book.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(xml.getBytes(StandardCharsets.UTF_8));
    }
    assertEquals("One seen\nTwo hidden\nThree seen\n", hidden(file));
  }

  private static String document(String styles, String tables) {
    StringBuilder xml = new StringBuilder("<office:document-content");
    for (String name : new String[] {"office", "style", "table", "text"}) {
      xml.append(" xmlns:").append(name).append("=\"").append(NAMES).append(name).append(":1.0\"");
    }
    xml.append("><office:automatic-styles>").append(styles).append("</office:automatic-styles>");
    xml.append("<office:body><office:spreadsheet>").append(tables);
    return xml.append("</office:spreadsheet></office:body></office:document-content>").toString();
  }

  private static String style(String name, String properties) {
    return "<style:style style:name=\""
        + name
        + "\" style:family=\"table\">"
        + properties
        + "</style:style>";
  }

  private static String table(String name, String style) {
    return "<table:table table:name=\""
        + name
        + "\" table:style-name=\""
        + style
        + "\"><table:table-row><table:table-cell office:value-type=\"string\"><text:p>"
        + name
        + "</text:p></table:table-cell></table:table-row></table:table>";
  }
}
