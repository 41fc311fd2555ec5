package clenchbook.reading.formats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.xlsx.XlsxRelations;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HostileInputTest {
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  @TempDir Path folder;

  private static String refused(Path file) {
    return assertTimeout(
        PATIENCE,
        () -> {
          UnreadableWorkbook refusal =
              assertThrows(
                  UnreadableWorkbook.class,
                  () -> {
                    try (TableSource source = TableFile.open(file, Optional.empty())) {
                      source.rows(0, row -> true);
                    }
                  });
          assertEquals(
              1,
              InEnglish.said(refusal.message()).lines().count(),
              InEnglish.said(refusal.message()));
          return InEnglish.said(refusal.message());
        });
  }

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  @Test
  void a_file_that_is_no_workbook_is_refused_by_its_content_whatever_its_name() throws IOException {
    assertTrue(refused(file("a.xlsx", new byte[0])).contains("empty"));
    assertTrue(refused(file("b.xlsx", "Date,Horse".getBytes())).contains("no workbook"));
    assertTrue(refused(file("c.xls", "<html></html>".getBytes())).contains("no workbook"));
    assertTrue(refused(folder.resolve("nowhere.xlsx")).contains("not there"));
    assertTrue(refused(Files.createDirectory(folder.resolve("d.xlsx"))).contains("no .csv"));
    assertTrue(refused(file("e.xlsx", new byte[] {'P', 'K', 3, 4, 0, 0})).contains("damaged"));
    byte[] ole = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0};
    assertTrue(refused(file("f.xls", ole)).contains("damaged"));
    assertTrue(refused(Zipped.empty().part("a.txt", "x").write(folder)).contains("no workbook"));
  }

  @Test
  void a_file_cut_short_is_refused() throws IOException {
    byte[] whole = Files.readAllBytes(Zipped.sheet("<row><c><v>1</v></c></row>").write(folder));
    for (int length = 4; length < whole.length - 22; length += 97) {
      assertTrue(refused(file("cut.xlsx", Arrays.copyOf(whole, length))).contains("damaged"));
    }
  }

  @Test
  void entities_and_document_types_are_refused_before_they_are_looked_at() throws IOException {
    String laughs =
        "<!DOCTYPE lolz [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\"><!ENTITY c"
            + " \"&b;&b;&b;&b;\">]><worksheet><sheetData><row><c"
            + " t=\"str\"><v>&c;</v></c></row></sheetData></worksheet>";
    String outside =
        "<!DOCTYPE x [<!ENTITY f SYSTEM \"file:///etc/passwd\">]><worksheet><sheetData><row>"
            + "<c t=\"str\"><v>&f;</v></c></row></sheetData></worksheet>";
    String remote =
        "<!DOCTYPE x SYSTEM \"http://127.0.0.1:9/x.dtd\"><worksheet><sheetData/></worksheet>";
    for (String xml : new String[] {laughs, outside, remote}) {
      Path file = Zipped.sheet("").part("xl/worksheets/sheet1.xml", xml).write(folder);
      assertTrue(refused(file).contains("document type"));
    }
    Path inTexts = Zipped.sheet("").part("xl/sharedStrings.xml", laughs).write(folder);
    assertTrue(refused(inTexts).contains("document type"));
    Path inList = Zipped.sheet("").part("xl/workbook.xml", laughs).write(folder);
    assertTrue(refused(inList).contains("document type"));
  }

  /** Writes a part of spaces, which packs to about a thousandth. */
  private Path bomb(String part) throws IOException {
    Path usual = Zipped.sheet("").write(folder);
    Path file = folder.resolve("bomb.xlsx");
    byte[] block = new byte[1 << 16];
    Arrays.fill(block, (byte) ' ');
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out);
        java.util.zip.ZipFile source = new java.util.zip.ZipFile(usual.toFile())) {
      for (ZipEntry entry : java.util.Collections.list(source.entries())) {
        if (!entry.getName().equals(part)) {
          zip.putNextEntry(new ZipEntry(entry.getName()));
          source.getInputStream(entry).transferTo(zip);
          zip.closeEntry();
        }
      }
      zip.putNextEntry(new ZipEntry(part));
      zip.write("<a><b>".getBytes());
      for (long written = 0; written < 100 << 20; written += block.length) {
        zip.write(block);
      }
      zip.closeEntry();
    }
    return file;
  }

  @Test
  void a_part_that_unpacks_to_far_more_than_its_size_is_refused() throws IOException {
    for (String part : new String[] {"worksheets/sheet1", "sharedStrings", "styles", "workbook"}) {
      String told = refused(bomb("xl/" + part + ".xml"));
      assertTrue(told.contains("200 times") || told.contains("over 16 MB"), told);
    }
  }

  @Test
  void a_tag_without_end_is_refused() throws IOException {
    StringBuilder tag = new StringBuilder("<worksheet x=\"");
    Random random = new Random(20260314);
    for (int i = 0; i < 20_000_000; i++) {
      tag.append((char) ('a' + random.nextInt(26)));
    }
    Path file = Zipped.sheet("").part("xl/worksheets/sheet1.xml", tag.toString()).write(folder);
    assertTrue(refused(file).contains("16 MB"));
  }

  @Test
  void a_dimension_of_a_million_rows_over_three_is_only_three() throws IOException {
    Path file =
        Zipped.sheet("")
            .part(
                "xl/worksheets/sheet1.xml",
                "<worksheet><dimension ref=\"A1:XFD1048576\"/><sheetData><row"
                    + " r=\"1\"><c><v>1</v></c></row><row r=\"1048576\"><c><v>2</v></c></row><row"
                    + " r=\"2000000\"><c><v>3</v></c></row></sheetData></worksheet>")
            .write(folder);
    assertTimeout(PATIENCE, () -> assertEquals(2, Zipped.rows(file).size()));
  }

  @Test
  void sixteen_thousand_columns_are_read_and_those_beyond_left() throws IOException {
    StringBuilder row = new StringBuilder("<row>");
    for (int column = 0; column < 20_000; column++) {
      row.append("<c><v>").append(column).append("</v></c>");
    }
    Path file = Zipped.sheet(row.append("</row>").toString()).write(folder);
    try (TableSource source = TableFile.open(file, Optional.empty())) {
      source.rows(0, read -> assertEqualsColumns(read.cells().size()));
    }
  }

  private static boolean assertEqualsColumns(int columns) {
    assertEquals(TableSource.MOST_COLUMNS, columns);
    return true;
  }

  @Test
  void names_of_parts_never_leave_the_package() {
    assertEquals("etc/passwd", XlsxRelations.resolve("xl/", "../../../../etc/passwd"));
    assertEquals("xl/a.xml", XlsxRelations.resolve("xl/", "./b/..//a.xml"));
    assertEquals("a.xml", XlsxRelations.resolve("xl/", "\\a.xml"));
    assertFalse(XlsxRelations.resolve("", "..").contains(".."));
  }

  @Test
  void a_row_repeated_without_end_is_refused() throws IOException {
    Path file =
        Zipped.empty()
            .part(
                "content.xml",
                "<d xmlns:table=\"t\" xmlns:o=\"o\"><table:table"
                    + " table:name=\"Visits\"><table:table-row"
                    + " table:number-rows-repeated=\"999999999\"><table:table-cell"
                    + " o:value-type=\"float\" o:value=\"1\""
                    + " table:number-columns-repeated=\"999999999\"/></table:table-row></table:table></d>")
            .write(folder);
    assertTrue(refused(file).contains("65,536"));
  }

  @Test
  void a_changed_byte_in_a_part_is_noticed_by_its_sum() throws IOException {
    Path file = folder.resolve("stored.xlsx");
    byte[] usual = Files.readAllBytes(Zipped.sheet("<row><c><v>85</v></c></row>").write(folder));
    Files.write(file, usual);
    byte[] stored = storedCopy(file);
    String text = new String(stored, java.nio.charset.StandardCharsets.ISO_8859_1);
    stored[text.indexOf("<v>85</v>") + 3] = '9';
    Path changed = file("changed.xlsx", stored);
    try (TableSource source = TableFile.open(changed, Optional.empty())) {
      assertThrows(DamagedSheet.class, () -> source.rows(0, row -> true));
    }
  }

  private static byte[] storedCopy(Path file) throws IOException {
    java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
    try (java.util.zip.ZipFile source = new java.util.zip.ZipFile(file.toFile());
        ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.setLevel(0);
      for (ZipEntry entry : java.util.Collections.list(source.entries())) {
        zip.putNextEntry(new ZipEntry(entry.getName()));
        source.getInputStream(entry).transferTo(zip);
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
