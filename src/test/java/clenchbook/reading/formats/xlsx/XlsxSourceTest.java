package clenchbook.reading.formats.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.Zipped;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The many ways in which programs write the same sheet (ECMA-376 part 1, 18.3, from memory). */
class XlsxSourceTest {
  @TempDir Path folder;

  private List<String> rows(Zipped book) throws IOException {
    return Zipped.rows(book.write(folder));
  }

  private List<String> cells(String cells) throws IOException {
    return rows(Zipped.sheet("<row r=\"1\">" + cells + "</row>"));
  }

  @Test
  void shared_and_inline_texts_and_their_runs_are_the_same_words() throws IOException {
    Zipped book =
        Zipped.sheet(
                "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v></c><c"
                    + " r=\"C1\" t=\"inlineStr\"><is><t>Rosie</t></is></c><c r=\"D1\""
                    + " t=\"inlineStr\"><is><r><t>Ja</t></r><r><rPr><b/></rPr><t>ck</t></r></is></c><c"
                    + " r=\"E1\" t=\"str\"><f>A1</f><v>Bramble</v></c></row>")
            .part(
                "xl/sharedStrings.xml",
                "<sst><si><t>Bramble</t></si><si><r><t>東</t></r><r><t xml:space=\"preserve\">"
                    + " 京</t></r><rPh sb=\"0\" eb=\"2\"><t>トウキョウ</t></rPh><phoneticPr"
                    + " fontId=\"1\"/></si></sst>");
    assertEquals(List.of("1: T0=Bramble T1=東 京 T2=Rosie T3=Jack T4=Bramble"), rows(book));
  }

  @Test
  void rows_and_cells_may_leave_their_place_unsaid() throws IOException {
    Zipped book =
        Zipped.sheet(
            "<row><c><v>1</v></c><c><v>2</v></c></row><row/><row r=\"5\"><c><v>3</v></c></row><row>"
                + "<c r=\"C6\"><v>4</v></c><c><v>5</v></c></row>");
    assertEquals(List.of("1: N0=1 N1=2", "5: N0=3", "6: N2=4 N3=5"), rows(book));
  }

  @Test
  void truths_errors_iso_days_and_formulas_without_result() throws IOException {
    assertEquals(
        List.of("1: T0=TRUE F1=#REF! M2=2026-03-14 N3=(formula) N4=(formula) S5=0:45"),
        cells(
            "<c t=\"b\"><v>1</v></c><c t=\"e\"><v>#REF!</v></c><c"
                + " t=\"d\"><v>2026-03-14T00:00:00</v></c><c><f>A1</f></c><c><f>A1</f><v></v></c><c"
                + " t=\"d\"><v>00:45:00</v></c>"));
  }

  @Test
  void empty_texts_and_styled_empty_cells_are_blank() throws IOException {
    assertEquals(
        List.of(), cells("<c s=\"3\"/><c t=\"str\"><f>IF(1,\"\")</f><v></v></c><c><v/></c>"));
  }

  @Test
  void styles_say_which_numbers_are_days_and_a_missing_style_says_nothing() throws IOException {
    Zipped book =
        Zipped.sheet(
                "<row><c s=\"1\"><v>46095</v></c><c s=\"2\"><v>46095</v></c><c"
                    + " s=\"3\"><v>0.03125</v></c><c"
                    + " s=\"99\"><v>46095</v></c><c><v>46095</v></c></row>")
            .part(
                "xl/styles.xml",
                "<styleSheet><numFmts><numFmt numFmtId=\"170\""
                    + " formatCode=\"dd/mm/yyyy;@\"/></numFmts><cellStyleXfs><xf"
                    + " numFmtId=\"0\"/><xf numFmtId=\"0\"/></cellStyleXfs><cellXfs><xf"
                    + " numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"170\"/><xf"
                    + " numFmtId=\"20\"/></cellXfs></styleSheet>");
    assertEquals(List.of("1: M0=2026-03-14 M1=2026-03-14 S2=0:45 N3=46095 N4=46095"), rows(book));
  }

  @Test
  void the_strict_form_and_prefixes_and_absolute_targets_read_alike() throws IOException {
    Zipped book =
        Zipped.empty()
            .part(
                "_rels/.rels",
                Zipped.relations(Zipped.STRICT, "officeDocument", "/strict/book.xml"))
            .part(
                "strict/book.xml",
                "<x:workbook xmlns:x=\"http://purl.oclc.org/ooxml/spreadsheetml/main\""
                    + " xmlns:r=\"http://purl.oclc.org/ooxml/officeDocument/relationships\"><x:workbookPr"
                    + " date1904=\"true\"/><x:sheets><x:sheet name=\"Visits\" sheetId=\"1\""
                    + " r:id=\"rId0\"/></x:sheets></x:workbook>")
            .part(
                "strict/_rels/book.xml.rels",
                Zipped.relations(Zipped.STRICT, "worksheet", "../strict/./a.xml"))
            .part(
                "strict/a.xml",
                "<x:worksheet"
                    + " xmlns:x=\"http://purl.oclc.org/ooxml/spreadsheetml/main\"><x:sheetData><x:row>"
                    + "<x:c><x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>");
    assertEquals(List.of("1: N0=7"), rows(book));
    try (TableSource source = TableFile.open(book.write(folder), Optional.empty())) {
      assertTrue(source.countsFrom1904());
    }
  }

  @Test
  void charts_and_links_out_of_the_book_are_no_sheets() throws IOException {
    Zipped book =
        Zipped.sheet("<row><c><v>1</v></c></row>")
            .part(
                "xl/workbook.xml",
                "<workbook xmlns:r=\"http://r\"><sheets><sheet name=\"Chart\" r:id=\"rId1\"/><sheet"
                    + " name=\"Visits\" r:id=\"rId0\"/><sheet name=\"Elsewhere\""
                    + " r:id=\"rId9\"/></sheets></workbook>")
            .part(
                "xl/_rels/workbook.xml.rels",
                "<Relationships><Relationship Id=\"rId0\" Type=\"x/worksheet\""
                    + " Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"rId1\""
                    + " Type=\"x/chartsheet\" Target=\"chartsheets/sheet1.xml\"/><Relationship"
                    + " Id=\"rId9\" Type=\"x/worksheet\" TargetMode=\"External\""
                    + " Target=\"file:///etc/passwd\"/></Relationships>");
    try (TableSource source = TableFile.open(book.write(folder), Optional.empty())) {
      assertEquals(List.of("Visits"), source.sheetNames());
    }
  }

  @Test
  void only_blocks_that_span_rows_are_handed_on_as_merged() throws IOException {
    Zipped book =
        Zipped.sheet("<row><c><v>1</v></c></row>")
            .part(
                "xl/worksheets/sheet1.xml",
                "<worksheet><dimension"
                    + " ref=\"A1:XFD1048576\"/><sheetData><row><c><v>1</v></c></row></sheetData><mergeCells><mergeCell"
                    + " ref=\"A2:A4\"/><mergeCell ref=\"A1:C1\"/><mergeCell"
                    + " ref=\"?\"/></mergeCells></worksheet>");
    try (TableSource source = TableFile.open(book.write(folder), Optional.empty())) {
      assertEquals(List.of(new MergedCells(2, 4, 0, 0)), source.rows(0, row -> true));
    }
  }

  @Test
  void escaped_control_characters_are_undone_and_other_underscores_kept() throws IOException {
    assertEquals(
        List.of("1: T0=a\rb T1=_x00 T2=_xZZZZ_"),
        cells(
            "<c t=\"str\"><v>a_x000D_b</v></c><c t=\"str\"><v>_x00</v></c><c"
                + " t=\"str\"><v>_xZZZZ_</v></c>"));
  }

  @Test
  void a_text_over_the_longest_is_cut() throws IOException {
    List<Cell> cells = new ArrayList<>();
    String text = "x".repeat(40_000);
    Path file = Zipped.sheet("<row><c t=\"str\"><v>" + text + "</v></c></row>").write(folder);
    try (TableSource source = TableFile.open(file, Optional.empty())) {
      source.rows(0, row -> cells.addAll(row.cells()));
    }
    Cell.Text cut = (Cell.Text) cells.get(0);
    assertEquals(32_767, cut.text().length());
    assertTrue(cut.cut());
  }

  @Test
  void a_sheet_that_breaks_off_gives_its_sound_rows_first() throws IOException {
    List<Integer> rows = new ArrayList<>();
    Path file =
        Zipped.sheet("")
            .part(
                "xl/worksheets/sheet1.xml",
                "<worksheet><sheetData><row><c><v>1</v></c></row><row><c")
            .write(folder);
    try (TableSource source = TableFile.open(file, Optional.empty())) {
      assertThrows(DamagedSheet.class, () -> source.rows(0, row -> rows.add(row.number())));
    }
    assertEquals(List.of(1), rows);
  }

  @Test
  void many_texts_stay_what_they_were() throws UnreadableWorkbook {
    CompactTexts texts = new CompactTexts();
    for (int i = 0; i < 50_000; i++) {
      texts.add("text ü " + i, i % 7 == 0);
    }
    for (int i = 0; i < 50_000; i += 13) {
      assertEquals("text ü " + i, texts.get(i));
      assertEquals(i % 7 == 0, texts.isCut(i));
    }
  }
}
