package clenchbook.reading.formats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.csv.CsvForm;
import clenchbook.texts.InEnglish;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OtherFormatsTest {
  @TempDir Path folder;

  private Path csv(String name, byte[] bytes) throws IOException {
    Files.write(folder.resolve(name), bytes);
    return folder;
  }

  private List<String> csv(String text) throws IOException {
    return Zipped.rows(csv("Visits.csv", text.getBytes(StandardCharsets.UTF_8)));
  }

  // RFC 4180, section 2, rules 1 to 7 with its own examples (from memory)

  @Test
  void the_examples_of_rfc_4180_are_read() throws IOException {
    assertEquals(
        List.of("1: T0=aaa T1=bbb T2=ccc", "2: T0=zzz T1=yyy T2=xxx"),
        csv("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
    assertEquals(List.of("1: T0=aaa T1=bbb T2=ccc"), csv("\"aaa\",\"bbb\",\"ccc\""));
    assertEquals(List.of("1: T0=aaa T1=b\r\nbb T2=ccc"), csv("\"aaa\",\"b\r\nbb\",\"ccc\""));
    assertEquals(List.of("1: T0=aaa T1=b\"bb T2=ccc"), csv("\"aaa\",\"b\"\"bb\",\"ccc\""));
  }

  @Test
  void blank_lines_count_as_rows_and_blank_fields_are_no_cells() throws IOException {
    assertEquals(List.of("1: T0=a T2=c", "4: T1=b"), csv("a,,c\n\n\n,b\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Horse;Charge~Émile;85,50~Rosie;90,25 | ;",
            "Horse,Size~Émile,0: 2; 00: 2~Rosie,1: 2; 2: 2 | ','",
        "Horse\tNotes~Émile\tfine, good; sound | '\t'", "Horse~Rosie | ','",
        "\"a;b;c;d\",\"e\"~f,g | ','",
      })
  void what_parts_the_fields_is_found_out(String lines, char delimiter) {
    assertEquals(delimiter, CsvForm.delimiter(lines.replace('~', '\n')));
  }

  @Test
  void utf_8_with_and_without_mark_and_the_windows_code_page_read_alike() throws IOException {
    List<String> wanted = List.of("1: T0=Émile T1=£5");
    String text = "Émile,£5\n";
    byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
    assertEquals(wanted, Zipped.rows(csv("Visits.csv", utf8)));
    byte[] marked = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
    assertEquals(wanted, Zipped.rows(csv("Visits.csv", marked)));
    byte[] windows = text.getBytes(Charset.forName("windows-1252"));
    assertEquals(wanted, Zipped.rows(csv("Visits.csv", windows)));
    byte[] wide = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
    assertEquals(wanted, Zipped.rows(csv("Visits.csv", wide)));
  }

  @Test
  void a_first_line_may_say_the_delimiter() throws IOException {
    assertEquals(List.of("2: T0=a,b T1=c"), csv("sep=;\na,b;c\n"));
  }

  @Test
  void files_are_sheets_by_their_names_with_a_books_name_before_them_dropped() throws IOException {
    for (String name : List.of("my-book-Visits.csv", "my-book-Work.csv", "my-book-Owners.CSV")) {
      csv(name, "a\n".getBytes(StandardCharsets.UTF_8));
    }
    Files.writeString(folder.resolve("readme.txt"), "no sheet");
    try (TableSource source = TableFile.open(folder, Optional.empty())) {
      assertEquals(List.of("Owners", "Visits", "Work"), source.sheetNames());
    }
  }

  @Test
  void a_link_out_of_the_folder_is_no_sheet() throws IOException {
    Path outside = Files.createTempFile("outside", ".csv");
    try {
      Files.createSymbolicLink(folder.resolve("Owners.csv"), outside);
      assertThrows(UnreadableWorkbook.class, () -> TableFile.open(folder, Optional.empty()));
    } finally {
      Files.delete(outside);
    }
  }

  // the binary format, written by Apache POI

  private Workbook fill(Workbook book) {
    Sheet sheet = book.createSheet("Visits");
    CellStyle day = book.createCellStyle();
    day.setDataFormat(book.createDataFormat().getFormat("dd/mm/yyyy"));
    CellStyle time = book.createCellStyle();
    time.setDataFormat(book.createDataFormat().getFormat("h:mm"));
    Row row = sheet.createRow(2);
    Cell date = row.createCell(0);
    date.setCellValue(LocalDate.of(2026, 3, 14));
    date.setCellStyle(day);
    row.createCell(1).setCellValue("Bramble");
    row.createCell(2).setCellValue(85.1);
    Cell span = row.createCell(3);
    span.setCellValue(0.03125);
    span.setCellStyle(time);
    row.createCell(4).setCellValue(true);
    row.createCell(5).setCellErrorValue(FormulaError.REF.getCode());
    row.createCell(6).setCellFormula("C3*2");
    row.createCell(7).setCellFormula("B3&\"!\"");
    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
    sheet.addMergedRegion(new CellRangeAddress(2, 4, 0, 0));
    Sheet second = book.createSheet("Work");
    second.createRow(0).createCell(0).setCellValue("Trim");
    return book;
  }

  private static final String FILLED =
      "3: M0=2026-03-14 T1=Bramble N2=85.1 S3=0:45 T4=TRUE F5=#REF! N6=170.2 T7=Bramble!";

  @Test
  void a_binary_book_reads_like_any_other() throws IOException {
    Path file = folder.resolve("book.xls");
    try (Workbook book = fill(new HSSFWorkbook());
        OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    assertEquals(List.of(FILLED), Zipped.rows(file));
    assertEquals(List.of("1: T0=Trim"), Zipped.rows(file, 1, Optional.empty()));
    try (TableSource source = TableFile.open(file, Optional.empty())) {
      assertEquals(List.of(new MergedCells(3, 5, 0, 0)), source.rows(0, row -> true));
    }
  }

  @Test
  void an_encrypted_binary_book_needs_its_password() throws IOException {
    Path file = folder.resolve("book.xls");
    Biff8EncryptionKey.setCurrentUserPassword("hoof");
    try (Workbook book = fill(new HSSFWorkbook());
        OutputStream out = Files.newOutputStream(file)) {
      ((HSSFWorkbook) book).writeProtectWorkbook("hoof", "farrier");
      book.write(out);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    assertEquals(List.of(FILLED), Zipped.rows(file, 0, Optional.of("hoof")));
    assertEncrypted(file);
  }

  @Test
  void an_encrypted_office_book_needs_its_password() throws IOException, GeneralSecurityException {
    Path plain = Zipped.sheet("<row><c><v>7</v></c></row>").write(folder);
    Path file = folder.resolve("locked.xlsx");
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("hoof");
      try (OutputStream stream = encryptor.getDataStream(container)) {
        Files.copy(plain, stream);
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      container.writeFilesystem(bytes);
      Files.write(file, bytes.toByteArray());
    }
    assertEquals(List.of("1: N0=7"), Zipped.rows(file, 0, Optional.of("hoof")));
    assertEncrypted(file);
  }

  private static void assertEncrypted(Path file) {
    UnreadableWorkbook none =
        assertThrows(UnreadableWorkbook.class, () -> TableFile.open(file, Optional.empty()));
    assertTrue(
        InEnglish.said(none.message()).contains("CLENCHBOOK_WORKBOOK_PASSWORD"),
        InEnglish.said(none.message()));
    UnreadableWorkbook wrong =
        assertThrows(UnreadableWorkbook.class, () -> TableFile.open(file, Optional.of("paw")));
    assertTrue(
        InEnglish.said(wrong.message()).contains("does not open it"),
        InEnglish.said(wrong.message()));
  }

  // OpenDocument

  private static Zipped ods(String table) {
    return Zipped.empty()
        .part("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        .part(
            "content.xml",
            "<o:document-content xmlns:o=\"o\" xmlns:table=\"t\" xmlns:text=\"x\""
                + " xmlns:number=\"n\" xmlns:style=\"s\""
                + " xmlns:calcext=\"c\"><o:automatic-styles><number:number-style"
                + " style:name=\"N1\"><number:number number:min-integer-digits=\"2\""
                + " number:decimal-places=\"0\"/></number:number-style><style:style"
                + " style:name=\"ce1\" style:data-style-name=\"N1\"/></o:automatic-styles><o:body>"
                + "<o:spreadsheet><table:tracked-changes><table:table-row/></table:tracked-changes><table:table"
                + " table:name=\"Visits\">"
                + table
                + "</table:table></o:spreadsheet></o:body>"
                + "</o:document-content>");
  }

  @Test
  void repeated_rows_and_cells_of_an_open_document_stand_at_their_places() throws IOException {
    Zipped book =
        ods(
            "<table:table-row table:number-rows-repeated=\"3\"><table:table-cell"
                + " table:number-columns-repeated=\"16384\"/></table:table-row><table:table-row><table:table-cell"
                + " o:value-type=\"float\" o:value=\"7\""
                + " table:number-columns-repeated=\"2\"/><table:covered-table-cell/><table:table-cell"
                + " o:value-type=\"string\"><text:p>a<text:s text:c=\"2\"/>b</text:p>"
                + "<text:p>c</text:p><o:annotation><text:p>note</text:p></o:annotation></table:table-cell></table:table-row><table:table-row"
                + " table:number-rows-repeated=\"2\"><table:table-cell o:value-type=\"float\""
                + " o:value=\"1\"/></table:table-row><table:table-row"
                + " table:number-rows-repeated=\"1048000\"><table:table-cell/></table:table-row>");
    assertEquals(
        List.of("4: N0=7 N1=7 T3=a  b\nc", "5: N0=1", "6: N0=1"), Zipped.rows(book.write(folder)));
  }

  @Test
  void every_kind_of_value_of_an_open_document_is_known() throws IOException {
    Zipped book =
        ods(
            "<table:table-row><table:table-cell o:value-type=\"date\""
                + " o:date-value=\"2026-03-14\"/><table:table-cell o:value-type=\"time\""
                + " o:time-value=\"PT00H45M00S\"/><table:table-cell o:value-type=\"boolean\""
                + " o:boolean-value=\"true\"/><table:table-cell o:value-type=\"currency\""
                + " o:value=\"85.5\"/><table:table-cell table:formula=\"of:=1/0\""
                + " o:value-type=\"string\""
                + " calcext:value-type=\"error\"><text:p>#DIV/0!</text:p></table:table-cell><table:table-cell"
                + " table:formula=\"of:=A1\"/><table:table-cell o:value-type=\"float\""
                + " o:value=\"0\" table:style-name=\"ce1\"/></table:table-row>");
    assertEquals(
        List.of("1: M0=2026-03-14 S1=0:45 T2=TRUE N3=85.5 F4=#DIV/0! N5=(formula) N6=0"),
        Zipped.rows(book.write(folder)));
  }

  @Test
  void an_encrypted_open_document_is_refused_in_one_line() throws IOException {
    Zipped book =
        ods("")
            .part(
                "META-INF/manifest.xml",
                "<m:manifest xmlns:m=\"m\"><m:file-entry"
                    + " m:full-path=\"content.xml\"><m:encryption-data/></m:file-entry></m:manifest>");
    Path file = book.write(folder);
    UnreadableWorkbook refusal =
        assertThrows(UnreadableWorkbook.class, () -> TableFile.open(file, Optional.empty()));
    assertTrue(
        InEnglish.said(refusal.message()).contains("protected by a password"),
        InEnglish.said(refusal.message()));
    assertTrue(
        InEnglish.said(refusal.message()).contains("save a copy"),
        InEnglish.said(refusal.message()));
  }

  /** As OpenDocument 1.4 has it: the whole book is one locked part. From memory. */
  @Test
  void an_open_document_locked_as_a_whole_is_refused_in_one_line() throws IOException {
    Zipped book =
        Zipped.empty()
            .part("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
            .part(
                "META-INF/manifest.xml",
                "<m:manifest xmlns:m=\"m\"><m:file-entry"
                    + " m:full-path=\"encrypted-package\"><m:encryption-data/></m:file-entry>"
                    + "</m:manifest>")
            .part("encrypted-package", "x");
    Path file = book.write(folder);
    UnreadableWorkbook refusal =
        assertThrows(UnreadableWorkbook.class, () -> TableFile.open(file, Optional.empty()));
    assertTrue(
        InEnglish.said(refusal.message()).contains("protected by a password"),
        InEnglish.said(refusal.message()));
  }
}
